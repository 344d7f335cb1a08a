/**
 * Additive clot points before occlusion work, list B. The points were seen, the cut-offs were not:
 * so any point asks for a clinician's decision, and a total of nought clears nothing.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { clearsNothing, flag } from './points-fields.ts';

const listBConditions = {
  previousClot: 3,
  thrombophilia: 2,
  legParalysis: 2,
  pastCancer: 2,
  intensiveCareStay: 1,
  immobilised: 1,
} as const satisfies Record<string, number>;
type ListBCondition = keyof typeof listBConditions;
const listBAge = { fromYears: 60, points: 1 } as const;

export const occlusionPointsB = calculation({
  id: 'occlusion-points-b',
  title: 'Additive clot points before occlusion work, list B',
  area: 'occlusion',
  input: [
    { name: 'ageYears', kind: 'number', unit: 'a', min: 18, max: 120 },
    {
      name: 'conditions',
      kind: 'record',
      fields: [
        flag('previousClot', 'Previous venous clot.'),
        flag('thrombophilia', 'Known thrombophilia.'),
        flag('legParalysis', 'Present paralysis or paresis of a lower leg.'),
        flag('pastCancer', 'Cancer within five years, in remission.'),
        flag('intensiveCareStay', 'Stay in intensive or coronary care.'),
        flag('immobilised', 'Immobilised for a day or more.'),
      ],
    },
  ],
  result: [
    { name: 'points', unit: '1' },
    { name: 'gate', unit: '', about: 'always needs-clinician-decision above 0: no cut-off was seen' },
  ],
  citations: [
    { source: 'occlusion-screening-2022', locator: 'table 3: points; cut-offs not seen', mark: 'seen' },
  ],
  calculate: ({ ageYears, conditions }) => {
    const named = (Object.keys(listBConditions) as ListBCondition[])
      .filter((name) => conditions[name])
      .reduce((sum, name) => sum + listBConditions[name], 0);
    const points = named + (ageYears >= listBAge.fromYears ? listBAge.points : 0);
    return answer({ points, gate: points > 0 ? 'needs-clinician-decision' : 'below-gate' }, [
      {
        code: 'cut-off-not-seen',
        text: 'The cut-offs of this list were not seen; any point asks for a clinician.',
      },
      clearsNothing,
    ]);
  },
  example: {
    ageYears: 70,
    conditions: {
      previousClot: true,
      thrombophilia: false,
      legParalysis: false,
      pastCancer: false,
      intensiveCareStay: false,
      immobilised: false,
    },
  },
});
