/** Effusion of the knee over the course of care; it is graded, and so is no measurement with a figure. */
import { worked } from '#core/calculations/working.ts';
import { type EffusionRecord, effusions } from '#core/record/record.ts';
import { kneeEffusionChangeRow } from '../change/knee-effusion-change.ts';
import { nothingToCompare, type OutcomeLine, withoutNorm } from './judgement.ts';

const effusionChange = (own: readonly EffusionRecord[]): OutcomeLine['change'] => {
  if (own.length < 2) return nothingToCompare;
  const { working, outcome } = worked(kneeEffusionChangeRow, {
    earlier: own[0]!.grade,
    later: own.at(-1)!.grade,
  });
  if (!outcome.ok) return nothingToCompare;
  const { grades, beyondRaterDisagreement } = outcome.result;
  const verdict = !beyondRaterDisagreement ? 'within-error' : grades < 0 ? 'better' : 'worse';
  const by = Math.abs(grades) === 1 ? '1 grade' : `${Math.abs(grades)} grades`;
  return {
    sentence: `${own[0]!.grade} to ${own.at(-1)!.grade}, ${by}. ${beyondRaterDisagreement ? 'More than raters usually differ by.' : 'One grade is what raters differ by: not called a change.'}`,
    workings: [working],
    verdict,
  };
};

export const effusionLines = (found: readonly EffusionRecord[]): readonly OutcomeLine[] =>
  [...new Set(found.map((row) => row.joint))].map((joint) => {
    const own = found.filter((row) => row.joint === joint);
    return {
      key: `effusion ${joint}`,
      kind: 'effusion',
      title: `Effusion, ${joint.replaceAll('-', ' ')}`,
      readings: own.map(({ day, grade }) => ({ day, text: grade })),
      drawn: {
        courses: [
          { name: null, points: own.map(({ day, grade }) => ({ day, figure: effusions.indexOf(grade) })) },
        ],
        unit: '',
        grades: effusions,
        // Raters differ by one grade.
        error: 1,
        cut: null,
        better: 'lower',
      },
      norm: withoutNorm('Grades zero, trace, 1+, 2+, 3+; act on the grade itself.'),
      change: effusionChange(own),
    };
  });
