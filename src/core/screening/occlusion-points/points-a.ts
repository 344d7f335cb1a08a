/**
 * Additive points before occlusion work, list A. It asks for a clinician's decision and never clears.
 *
 * Seen in a scrambled layout, the mapping completed from memory, so it never blocks by itself: any
 * woman over 60 with a body-mass index over 30 passes 4 points, and such women are who the
 * knee-osteoarthritis trials took in. Holes in its bands are closed upward (a choice of this project).
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note } from '#core/outcome.ts';
import { diastolicBelowSystolic, diastolicField, systolicField } from '../blood-pressure-fields.ts';
import { clearsNothing, flag } from './points-fields.ts';

/** Points of list A by condition. */
const listAConditions = {
  pastClot: 5,
  acuteIllness: 5,
  earlyPostoperative: 5,
  severeArrhythmiaOrIschaemia: 5,
  pregnant: 4,
  varicoseVeins: 3,
  prolongedInactivity: 3,
  atrialFibrillationOrHeartFailure: 3,
  malignancy: 2,
  hyperlipidaemia: 2,
  oestrogen: 2,
} as const satisfies Record<string, number>;
type ListACondition = keyof typeof listAConditions;

/** Lower bounds, inclusive, highest first. */
const agePoints = [
  { fromYears: 60, points: 2 },
  { fromYears: 40, points: 1 },
] as const;
const bodyMassIndexPoints = [
  { from: 30, points: 2 },
  { from: 25, points: 1 },
] as const;
const pressurePoints = [
  { systolicFrom: 180, diastolicFrom: 100, points: 5 },
  { systolicFrom: 160, diastolicFrom: 95, points: 3 },
] as const;
const womanPoints = 1;
const decisionAbove = 4;

const scrambled: Note = {
  code: 'second-hand-and-memory',
  text: 'Points seen in a scrambled restatement and completed from memory; bands closed upward. Not a block by itself.',
};
const ownStop: Note = { code: 'stop-on-its-own', text: 'Pregnancy stops occlusion work whatever the total.' };

export const occlusionPointsA = calculation({
  id: 'occlusion-points-a',
  title: 'Additive points before occlusion work, list A',
  area: 'occlusion',
  input: [
    { name: 'sex', kind: 'enum', values: ['female', 'male'] },
    { name: 'ageYears', kind: 'number', unit: 'a', min: 18, max: 120 },
    { name: 'bodyMassIndex', kind: 'number', unit: 'kg/m2', min: 10, max: 80 },
    systolicField,
    diastolicField,
    {
      name: 'conditions',
      kind: 'record',
      fields: [
        flag('pastClot', 'Past deep-vein thrombosis or clotting tendency.'),
        flag('acuteIllness', 'Acute sickness or fever.'),
        flag('earlyPostoperative', 'Early after an operation.'),
        flag('severeArrhythmiaOrIschaemia', 'High-class arrhythmia or coronary ischaemia.'),
        flag('pregnant', 'Pregnant.'),
        flag('varicoseVeins', 'Varicose veins.'),
        flag('prolongedInactivity', 'Prolonged inactivity.'),
        flag('atrialFibrillationOrHeartFailure', 'Atrial fibrillation or heart failure.'),
        flag('malignancy', 'Malignancy.'),
        flag('hyperlipidaemia', 'Raised blood lipids.'),
        flag('oestrogen', 'Oestrogen therapy.'),
      ],
    },
  ],
  result: [
    { name: 'points', unit: '1' },
    {
      name: 'gate',
      unit: '',
      about: 'needs-clinician-decision above 4, else below-gate, which clears nothing',
    },
  ],
  citations: [
    {
      source: 'occlusion-course-summary',
      locator: 'points list, scrambled columns',
      mark: 'second-hand',
      remark: 'mapping completed from memory',
    },
  ],
  consistent: diastolicBelowSystolic,
  calculate: (input) => {
    const conditions = (Object.keys(listAConditions) as ListACondition[])
      .filter((name) => input.conditions[name])
      .reduce((sum, name) => sum + listAConditions[name], 0);
    const age = agePoints.find((row) => input.ageYears >= row.fromYears)?.points ?? 0;
    const mass = bodyMassIndexPoints.find((row) => input.bodyMassIndex >= row.from)?.points ?? 0;
    const pressure =
      pressurePoints.find(
        (row) => input.systolicMmhg >= row.systolicFrom || input.diastolicMmhg >= row.diastolicFrom,
      )?.points ?? 0;
    const points = conditions + age + mass + pressure + (input.sex === 'female' ? womanPoints : 0);
    return answer(
      { points, gate: points > decisionAbove ? 'needs-clinician-decision' : 'below-gate' },
      input.conditions.pregnant ? [scrambled, clearsNothing, ownStop] : [scrambled, clearsNothing],
    );
  },
  example: {
    sex: 'female',
    ageYears: 62,
    bodyMassIndex: 31,
    systolicMmhg: 130,
    diastolicMmhg: 78,
    conditions: {
      pastClot: false,
      acuteIllness: false,
      earlyPostoperative: false,
      severeArrhythmiaOrIschaemia: false,
      pregnant: false,
      varicoseVeins: false,
      prolongedInactivity: false,
      atrialFibrillationOrHeartFailure: false,
      malignancy: false,
      hyperlipidaemia: false,
      oestrogen: false,
    },
  },
});
