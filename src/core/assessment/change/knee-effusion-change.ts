/**
 * Two clinician's grades of knee effusion (stroke test) compared.
 *
 * Order: zero, trace, 1+, 2+, 3+. In 75 pairs of raters 54 agreed, 16 differed by one grade and 5 by two; in
 * osteoarthritis agreement can be poor. A change of one grade is within that disagreement: act at grades.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';

const effusionGrades = ['zero', 'trace', '1+', '2+', '3+'] as const;
export type EffusionGrade = (typeof effusionGrades)[number];

/** 0 for no wave up to 4 for fluid that cannot be moved. */
export const effusionOrder = (grade: EffusionGrade): number => effusionGrades.indexOf(grade);

const raterDisagreementGrades = 1;

export const kneeEffusionChangeRow = calculation({
  id: 'knee-effusion-change',
  title: 'Change of knee effusion grade',
  area: 'outcomes',
  input: [
    { name: 'earlier', kind: 'enum', values: effusionGrades },
    { name: 'later', kind: 'enum', values: effusionGrades },
  ],
  result: [
    { name: 'earlierOrder', unit: '1' },
    { name: 'laterOrder', unit: '1' },
    { name: 'grades', unit: '1', about: 'later less earlier' },
    { name: 'beyondRaterDisagreement', unit: '', about: 'more than one grade' },
  ],
  citations: [
    { source: 'sturgill-2009', locator: 'agreement of 75 pairs', mark: 'seen' },
    { source: 'sturgill-2009', locator: 'wording of the five grades', mark: 'second-hand' },
    { source: 'maricar-2016', locator: 'bulge sign in osteoarthritis: kappa −0.04 to 0.14', mark: 'seen' },
  ],
  calculate: (input) => {
    const earlierOrder = effusionOrder(input.earlier);
    const laterOrder = effusionOrder(input.later);
    const grades = laterOrder - earlierOrder;
    return answer(
      {
        earlierOrder,
        laterOrder,
        grades,
        beyondRaterDisagreement: Math.abs(grades) > raterDisagreementGrades,
      },
      [
        {
          code: 'act-at-grades',
          text: 'Five of 75 pairs of raters differed by two grades. Use the same rater; act on the grade itself.',
        },
      ],
    );
  },
  example: { earlier: 'trace', later: '2+' },
});
