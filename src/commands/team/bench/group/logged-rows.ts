/**
 * Sessions, sets, answers and mornings in the order of time, all patients side by side: rows of one patient
 * lie apart in the file, as they do in a clinic, and not in a row as a patient-wise filling would leave them.
 */
import { createHash } from 'node:crypto';
import { type AnswerField, answerFields } from '#core/record/morning-questions.ts';
import { answerColumnName } from '#data/schema/answer-columns.ts';
import type { Seeded } from '#simulation/raises/seeded.ts';
import {
  clinicId,
  dayOf,
  type GroupPlan,
  itemId,
  jointsOf,
  morningAfter,
  patientId,
  prescriptionId,
  sessionStart,
  setsOfItem,
  versionAt,
  zone,
} from './plan.ts';
import { type Client, numberedId, rawRows } from './raw-rows.ts';
import { doseOf } from './rows-in-force.ts';

const envelope = [
  'id',
  'clinic_id',
  'patient_id',
  'entry_id',
  'digest',
  'format',
  'day',
  'zone',
  'sent_at',
  'arrived_at',
  'clock_doubtful',
  'entered_by',
  'red_flags',
  'extra_pain_relief',
];
const owner = ['clinic_id', 'patient_id'];

const tablesOf = (client: Client) => ({
  session: rawRows(client, 'training_session', [
    ...envelope,
    'began_at',
    'ended_at',
    'kind',
    'did_extra',
    'stopped_by_flag',
  ]),
  set: rawRows(client, 'set_log', [
    'id',
    ...owner,
    'session_id',
    'prescription_id',
    'item_id',
    'set_number',
    'repetitions',
    'load_kg',
    'reserve',
    'stop_reason',
  ]),
  sessionJoint: rawRows(client, 'session_joint', [
    'session_id',
    ...owner,
    'joint',
    'pain_before_0_10',
    'pain_during_0_10',
    'pain_after_0_10',
    'pain_two_hours_state',
    'muscle_burn_0_10',
    'cuff_discomfort_0_10',
    'gave_way',
  ]),
  morning: rawRows(client, 'morning', [...envelope, 'answered_at', 'fatigue_0_10', 'fatigue_state', 'late']),
  morningJoint: rawRows(client, 'morning_joint', [
    'morning_id',
    ...owner,
    'joint',
    ...answerFields.map(answerColumnName),
  ]),
});

export type LogTables = ReturnType<typeof tablesOf>;
export const logTables = tablesOf;

const session = 1;
const set = 2;
const morning = 3;

export const sessionId = (plan: GroupPlan, patient: number, place: number): string =>
  numberedId(session, place * plan.patients + patient);
export const morningId = (plan: GroupPlan, patient: number, place: number): string =>
  numberedId(morning, place * plan.patients + patient);

const envelopeOf = (id: string, patient: number, at: number, random: Seeded) => {
  const owner = patientId(patient);
  const digest = createHash('sha256').update(id).digest('hex');
  const flags = random.chance(0.0005) ? '["locked-joint"]' : '[]';
  return [
    id,
    clinicId,
    owner,
    `entry-${id}`,
    digest,
    1,
    dayOf(at),
    zone,
    at,
    at + 2000,
    0,
    owner,
    flags,
    random.chance(0.03) ? 1 : 0,
  ];
};

/** Quiet for most, sore for one in sixteen; a few answers are missing. */
const painOf = (patient: number, random: Seeded): number | null => {
  if (random.chance(0.01)) return null;
  const usual = patient % 16 === 3 ? 5 : 1 + (patient % 2);
  return Math.max(0, Math.min(10, Math.round(usual + random.normal() * 0.8)));
};

const writeSession = (
  tables: LogTables,
  plan: GroupPlan,
  patient: number,
  place: number,
  random: Seeded,
): void => {
  const id = sessionId(plan, patient, place);
  const began = sessionStart(plan, place);
  const ended = began + 25 * 60_000;
  tables.session.add([...envelopeOf(id, patient, ended, random), began, ended, 'full', 0, 0]);
  const owner = [clinicId, patientId(patient)];
  const version = versionAt(plan, place);
  let number = (place * plan.patients + patient) * 8;
  for (const [item, sets] of setsOfItem.entries()) {
    const { loadKg } = doseOf(patient, item, version) as { readonly loadKg: number };
    const said = [id, prescriptionId(patient, item, version), itemId(patient, item)];
    for (let at = 1; at <= sets; at++) {
      const repetitions = random.chance(0.05) ? 12 : 15 + random.below(11);
      const done = [at, repetitions, loadKg, 2, 'none'];
      tables.set.add([numberedId(set, number++), ...owner, ...said, ...done]);
    }
  }
  for (const joint of jointsOf(patient)) {
    const pains = [painOf(patient, random), painOf(patient, random), painOf(patient, random)];
    tables.sessionJoint.add([id, ...owner, joint, ...pains, 'not-applicable', null, null, 0]);
  }
};

/** A quiet morning: a little stiff, seldom swollen, no flare; every question was asked in its newest wording. */
const answerTo = (field: AnswerField, patient: number, random: Seeded): string | number | null => {
  if (field.kind === 'flag') return 0;
  if (field.kind === 'integer')
    return field.unit === '{score}' ? painOf(patient, random) : 10 + random.below(10);
  if ('nullable' in field) return field.values[random.chance(0.02) ? 1 : 0]!;
  return field.values.includes('asked' as never) ? 'asked' : field.values.at(-1)!;
};

const writeMorning = (
  tables: LogTables,
  plan: GroupPlan,
  patient: number,
  place: number,
  random: Seeded,
): void => {
  const id = morningId(plan, patient, place);
  const at = morningAfter(plan, place);
  tables.morning.add([...envelopeOf(id, patient, at, random), at, null, 'not-applicable', 0]);
  for (const joint of jointsOf(patient)) {
    const answers = answerFields.map((field) => answerTo(field, patient, random));
    tables.morningJoint.add([id, clinicId, patientId(patient), joint, ...answers]);
  }
};

/** One session of every patient and the morning after it; one morning in thirty is not answered. */
export const writeRound = (tables: LogTables, plan: GroupPlan, place: number, random: Seeded): void => {
  for (let patient = 0; patient < plan.patients; patient++)
    writeSession(tables, plan, patient, place, random);
  for (let patient = 0; patient < plan.patients; patient++)
    if (!random.chance(1 / 30)) writeMorning(tables, plan, patient, place, random);
  for (const table of Object.values(tables)) table.flush();
};
