/** The parts of a first visit, each saved by itself. Sent again unchanged, a part is not saved twice. */
import { z } from 'zod';
import { Problem, refusedWith } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { unknownItems } from '#api/inputs/screening-items.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measurementConsistent, unlikely } from '#core/assessment/measurements/measurement-checks.ts';
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import { consentActs, consentKinds, wordingSources } from '#core/episode/consent.ts';
import {
  goalFields,
  restingPressureFields,
  testToFailureFields,
  usualJointFields,
} from '#core/episode/visit-fields.ts';
import { householdEquipment } from '#core/exercises/equipment.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { detailChangeFields } from '#core/record/patient-details.ts';
import { careProfileFields, screeningFields } from '#core/record/staff-fields.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { screeningSheetVersion } from '#core/screening/items.ts';
import type { Access } from '#data/access.ts';
import { setBaseline } from '#data/assessment/baselines.ts';
import { measurementsOf, recordMeasurement } from '#data/assessment/measurements.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { type CareProfile, type Patient, patientOf, saveProfile } from '#data/patients/people.ts';
import { newestScreening, recordAnswers } from '#data/screening/screenings.ts';
import { saveDetails } from '../patients/save-details.ts';
import { beginEpisode } from './begin-episode.ts';
import { recordConsentOf } from './record-consent.ts';

/** What the page sends. Each part is checked where it is saved, so that none stands in another's way. */
export const firstVisitInput = z.strictObject({
  details: z.unknown().optional(),
  profile: z.unknown().optional(),
  goal: z.unknown().optional(),
  consents: z.array(z.unknown()).max(20).default([]),
  screening: z.unknown().optional(),
  joints: z.array(z.unknown()).max(2).default([]),
  pressure: z.unknown().optional(),
  test: z.unknown().optional(),
});
export type FirstVisit = z.infer<typeof firstVisitInput>;

export interface VisitPart {
  readonly part: string;
  readonly title: string;
  /** False where it is on record as it was sent. */
  readonly save: () => Promise<boolean>;
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const saveProfilePart = async (access: Access, patientId: string, sent: unknown): Promise<boolean> => {
  const typed = checked(careProfileFields, sent);
  const { version: _, ...before } = (await patientOf(access, patientId))?.profile ?? { version: 0 };
  const known: Partial<CareProfile> = before;
  const profile: CareProfile = {
    diagnosis: typed.diagnosis,
    inflammatoryArthritis: typed.inflammatoryArthritis,
    followedJoints: typed.followedJoints as readonly Joint[],
    swellingNotAsked: (typed.swellingNotAsked ?? known.swellingNotAsked ?? []) as readonly Joint[],
    ownedLoadsKg: typed.ownedLoadsKg,
    ownedEquipment: typed.ownedEquipment ?? known.ownedEquipment ?? householdEquipment,
    formulaSex: typed.formulaSex,
  };
  if (isSame(profile, known)) return false;
  await saveProfile(access, patientId, profile);
  return true;
};

const saveScreening = async (access: Access, patientId: string, sent: unknown): Promise<boolean> => {
  const sheet = checked(screeningFields, sent, (value) => unknownItems(value.answers, access.day));
  if (sheet.sheetVersion !== screeningSheetVersion)
    throw new Problem('refused', 'The questions have changed since you opened this page. Reload it.');
  const before = await newestScreening(access, patientId);
  const patient = await patientOf(access, patientId);
  if (!patient) throw new Problem('not-found', 'There is no such patient in your clinic.');
  await recordAnswers(access, patient, sheet);
  return (await newestScreening(access, patientId))?.id !== before?.id;
};

const saveMeasured = async (
  access: Access,
  patientId: string,
  row: Measurement,
  isConfirmed: boolean,
): Promise<boolean> => {
  const refused = measurementConsistent(row, access.day);
  if (refused.length > 0) throw refusedWith(refused);
  const known = await measurementsOf(access, patientId);
  const bare = known.map(
    ({ id: _i, recordedAt: _a, recordedBy: _b, confirmed: _c, answeredAtHome: _h, ...of }) => of,
  );
  if (bare.some((value) => isSame(value, row))) return false;
  const questions = unlikely(row, known);
  if (questions.length > 0 && !isConfirmed)
    throw new Problem('not-confirmed', questions.join(' '), { questions });
  await recordMeasurement(access, patientId, row, isConfirmed);
  return true;
};

const saveUsual = async (access: Access, patientId: string, sent: unknown): Promise<boolean> => {
  const { joint, acceptablePainLimit, ...told } = checked(usualJointFields, sent);
  const refuse = (field: string, reason: string) =>
    refusedWith([{ field: `input.${field}`, code: 'missing', reason }]);
  const followed = (await patientOf(access, patientId))?.profile?.followedJoints ?? [];
  if (!followed.includes(joint as Joint))
    throw refuse(
      'joint',
      `${jointInWords(joint as Joint)} is not followed. Enter it in the care profile first.`,
    );
  if (acceptablePainLimit === null) {
    const over = engineSettingValues(await settingsOf(access))['ceiling-over-usual'];
    const proposed = proposePainLimit(told.usualPain, over);
    const proposal = proposed === null ? '' : ` Proposed from usual pain: ${proposed}.`;
    throw refuse('acceptablePainLimit', `Enter the acceptable pain limit, 5 to 7.${proposal}`);
  }
  const newest = (await baselinesOf(access, patientId)).findLast((row) => row.joint === joint);
  const values = { joint: joint as Joint, acceptablePainLimit, ...told };
  const isKnown =
    newest && Object.entries(values).every(([name, value]) => newest[name as 'joint'] === value);
  if (isKnown) return false;
  // Nobody has tested the knee here: the rules then take no effusion as usual, the more cautious reading.
  const rest = { usualPainTop: null, usualEffusion: 'zero' as const, provisional: true };
  await setBaseline(access, patientId, { ...values, ...rest }, 'Told by the patient at the first visit.');
  await evaluateRecord(access, patientId, { cause: 'clinician', sessionId: null, morningId: null });
  return true;
};

const consentInput = z.strictObject({
  kind: z.enum(consentKinds),
  act: z.enum(consentActs),
  wordingSource: z.enum(wordingSources),
  wordingVersion: z.number().int().min(1),
});

const saveConsent = (access: Access, patientId: string, sent: unknown): Promise<boolean> => {
  const row = consentInput.safeParse(sent);
  if (!row.success) throw new Problem('refused', 'This consent could not be read. Load the page again.');
  return recordConsentOf(access, patientId, { ...row.data, reason: null });
};

const keyOf = (sent: unknown, name: string): string => {
  const value = typeof sent === 'object' && sent !== null ? (sent as Record<string, unknown>)[name] : null;
  return typeof value === 'string' && /^[a-z-]{1,30}$/.test(value) ? value : 'unknown';
};

/** In the order in which one rests on another. */
export const partsOf = (
  access: Access,
  { id }: Patient,
  visit: FirstVisit,
  isConfirmed: boolean,
): readonly VisitPart[] => {
  const { day } = access;
  const one = (part: keyof FirstVisit, title: string, save: (sent: unknown) => Promise<boolean>) =>
    visit[part] === undefined || visit[part] === null
      ? []
      : [{ part, title, save: async () => save(visit[part]) }];
  return [
    ...one('details', 'Personal details', async (changes) => {
      const sent = checked(detailChangeFields, { changes });
      return (await saveDetails(access, id, sent.changes)).length > 0;
    }),
    ...one('profile', 'Care profile', (sent) => saveProfilePart(access, id, sent)),
    ...(visit.profile || visit.goal
      ? [
          {
            part: 'goal',
            title: 'Episode of care',
            save: () =>
              beginEpisode(access, id, visit.goal ? checked(goalFields, { goal: visit.goal }).goal : null),
          },
        ]
      : []),
    ...visit.consents.map((sent) => ({
      part: `consents.${keyOf(sent, 'kind')}`,
      title: 'Consent',
      save: async () => saveConsent(access, id, sent),
    })),
    ...one('screening', 'Screening', (sent) => saveScreening(access, id, sent)),
    ...visit.joints.map((sent) => ({
      part: `joints.${keyOf(sent, 'joint')}`,
      title: `Usual values, ${keyOf(sent, 'joint').replace(/-/g, ' ')}`,
      save: async () => saveUsual(access, id, sent),
    })),
    ...one('pressure', 'Blood pressure', (sent) => {
      const row = { kind: 'blood-pressure' as const, day, ...checked(restingPressureFields, sent) };
      return saveMeasured(access, id, { ...row, position: 'seated' }, isConfirmed);
    }),
    ...one('test', 'Test to failure', (sent) => {
      const row = { kind: 'repetitions-to-failure' as const, day, ...checked(testToFailureFields, sent) };
      return saveMeasured(access, id, row, isConfirmed);
    }),
  ];
};
