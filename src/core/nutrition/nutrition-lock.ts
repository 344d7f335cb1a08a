/**
 * When nutrition targets stay closed and the person is referred instead.
 *
 * Kidney disease, underweight, a worry about eating or weight, pregnancy and age under 18: no calorie,
 * weight or protein target is given automatically, none is shown to the patient, and a clinician is asked.
 * "Not known" locks like "yes". A question that was not asked is listed, so that no one takes it for "no".
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Note } from '../outcome.ts';
import type { Citation } from '../sources/citation.ts';
import { bodyMassIndexField } from './body-fields.ts';
import { underweightUnder } from './espen-undernutrition.ts';
import { kidneyCitations, kidneyLockReasons } from './kidney-lock.ts';
import { egfrField, type LockAnswers, type LockQuestion, lockQuestions, locks } from './lock-fields.ts';

export const lockCitations: readonly Citation[] = [
  ...kidneyCitations,
  { source: 'espen-2015', locator: 'body-mass index under 18.5', mark: 'seen' },
  { source: 'mountjoy-2018', locator: 'low energy availability as a caution', mark: 'seen' },
];

export interface LockFacts extends LockAnswers {
  readonly egfr?: number;
  readonly bodyMassIndex?: number;
  readonly ageYears?: number;
  readonly malnutritionFlag?: 'yes' | 'no' | 'not-known';
}

const adultFrom = 18;

/** Reasons beyond the kidney for which no target is given at all. */
export const otherLockReasons = (facts: LockFacts): readonly string[] => [
  ...(facts.bodyMassIndex !== undefined && facts.bodyMassIndex < underweightUnder ? ['underweight'] : []),
  ...(locks(facts.malnutritionFlag) ? ['malnutrition-flag'] : []),
  ...(locks(facts.eatingOrWeightWorry) ? ['eating-or-weight-worry'] : []),
  ...(locks(facts.pregnancy) ? ['pregnancy'] : []),
  ...(facts.ageYears !== undefined && facts.ageYears < adultFrom ? ['under-18'] : []),
];

const notAsked = (facts: LockAnswers): readonly LockQuestion[] =>
  lockQuestions.map((field) => field.name).filter((name) => facts[name] === undefined);

export const lockNotes = (facts: LockAnswers, otherReasons: readonly string[]): readonly Note[] => {
  const open = notAsked(facts);
  return [
    ...(otherReasons.length > 0
      ? [
          {
            code: 'refer-clinician',
            text: 'No automatic target, and none shown to the patient. Refer to the physician or dietitian; for a worry about eating, without figures.',
          },
        ]
      : []),
    ...(open.length > 0
      ? [{ code: 'not-asked', text: `Not asked, so not known to be absent: ${open.join(', ')}.` }]
      : []),
  ];
};

export const nutritionLockRow = calculation({
  id: 'nutrition-lock',
  title: 'When nutrition targets stay closed',
  area: 'nutrition',
  input: [
    { name: 'ageYears', kind: 'number', unit: 'a', min: 0, max: 120, optional: true },
    { ...bodyMassIndexField, optional: true },
    egfrField,
    { name: 'malnutritionFlag', kind: 'enum', values: ['yes', 'no', 'not-known'], optional: true },
    ...lockQuestions,
  ],
  result: [
    { name: 'locked', unit: '' },
    { name: 'reasons', unit: '' },
    { name: 'notAsked', unit: '' },
    {
      name: 'showToPatient',
      unit: '',
      about: 'whether calorie and weight targets may be shown to the patient',
    },
  ],
  citations: lockCitations,
  calculate: (facts) => {
    const other = otherLockReasons(facts);
    const reasons = [...kidneyLockReasons(facts), ...other];
    const open = notAsked(facts);
    return answer(
      {
        locked: reasons.length > 0,
        reasons,
        notAsked: open,
        showToPatient: reasons.length === 0 && open.length === 0,
      },
      lockNotes(facts, reasons),
    );
  },
  example: { ageYears: 66, bodyMassIndex: 17.9, kidneyDisease: 'no', pregnancy: 'no' },
});
