/**
 * The resting blood pressure at which a session does not start.
 *
 * A proposal of this project built on published lists that differ: above 180/110 is an absolute and
 * above 160/100 a relative contraindication in one table, 180 or 110 and over in another; 200/110 is
 * the limit of a supervised test and not of training. Equality holds, because two lists count it.
 * It says nothing about readings during exercise, and a reading under it clears nothing.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Note } from '../outcome.ts';
import { defaultsOf, type SettingValues } from '../sources/clinic-setting.ts';
import { diastolicBelowSystolic, diastolicField, systolicField } from './blood-pressure-fields.ts';
import { screeningSettings } from './settings.ts';

const bloodPressureResults = ['start', 'hold-occlusion', 'hold-all'] as const;
export type BloodPressureResult = (typeof bloodPressureResults)[number];

export const bloodPressureResult = (
  systolicMmhg: number,
  diastolicMmhg: number,
  settings: SettingValues,
): BloodPressureResult => {
  const limits = { ...defaultsOf(screeningSettings), ...settings };
  if (systolicMmhg >= limits['hold-all-systolic']! || diastolicMmhg >= limits['hold-all-diastolic']!) {
    return 'hold-all';
  }
  return systolicMmhg >= limits['hold-occlusion-systolic']! ||
    diastolicMmhg >= limits['hold-occlusion-diastolic']!
    ? 'hold-occlusion'
    : 'start';
};

/** A knee-ligament trial of occlusion left people above this out; nobody above it was studied there. */
const trialLimit = { systolicMmhg: 140, diastolicMmhg: 80 } as const;
const emergencyAbove = { systolicMmhg: 180, diastolicMmhg: 120 } as const;

const notesFor = (
  systolicMmhg: number,
  diastolicMmhg: number,
  gate: BloodPressureResult,
): readonly Note[] => {
  const notes: Note[] = [
    {
      code: 'clears-nothing',
      text: 'A reading under the gate clears nothing; diagnosed high blood pressure keeps occlusion closed until a clinician clears it.',
    },
  ];
  if (gate !== 'start') {
    notes.push({
      code: 'repeat-once',
      text: 'Repeat once after five minutes of seated rest before the hold is recorded (common practice, from memory).',
    });
  }
  if (gate === 'hold-occlusion') {
    notes.push({
      code: 'clinician-review',
      text: 'Other resistance work only after a clinician has reviewed the reading.',
    });
  }
  if (systolicMmhg > emergencyAbove.systolicMmhg || diastolicMmhg > emergencyAbove.diastolicMmhg) {
    notes.push({
      code: 'emergency-with-symptoms',
      text: 'With chest pain, breathlessness, weakness, or a change of speech or sight: emergency care now.',
    });
  }
  if (systolicMmhg > trialLimit.systolicMmhg || diastolicMmhg > trialLimit.diastolicMmhg) {
    notes.push({
      code: 'above-trial-limit',
      text: 'Above 140/80, where one occlusion trial after knee-ligament surgery took nobody in.',
    });
  }
  return notes;
};

export const bloodPressureThreshold = calculation({
  id: 'exercise-start-gate',
  title: 'Resting blood pressure: may a session start',
  area: 'screening',
  input: [systolicField, diastolicField],
  result: [{ name: 'gate', unit: '', about: 'start, hold-occlusion or hold-all' }],
  citations: [
    {
      source: 'blood-pressure-exercise-2024',
      locator: 'table 1',
      mark: 'seen',
      remark: 'absolute above 180/110, relative above 160/100',
    },
    {
      source: 'heart-failure-exercise-2023',
      locator: 'table 1',
      mark: 'seen',
      remark: '180 or 110 and over, equality counted',
    },
    {
      source: 'occlusion-screening-2022',
      locator: 'table 5',
      mark: 'seen',
      remark: '180/110 and over listed before occlusion work',
    },
    {
      source: 'acl-occlusion-trial-2019',
      locator: 'registry entry: exclusions',
      mark: 'second-hand',
      remark: 'above 140/80 left out',
    },
  ],
  consistent: diastolicBelowSystolic,
  calculate: ({ systolicMmhg, diastolicMmhg }) => {
    const gate = bloodPressureResult(systolicMmhg, diastolicMmhg, {});
    return answer({ gate }, notesFor(systolicMmhg, diastolicMmhg, gate));
  },
  example: { systolicMmhg: 138, diastolicMmhg: 84 },
});
