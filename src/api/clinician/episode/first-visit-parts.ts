/** The parts of a first visit, each saved by itself. Sent again unchanged, a part is not saved twice. */
import { z } from 'zod';
import { Problem, refusedWith } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { unknownItems } from '#api/inputs/screening-items.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measurementConsistent, unlikely } from '#core/assessment/measurements/measurement-checks.ts';
import { bodyMass } from '#core/assessment/measures/body-mass.ts';
import { stature } from '#core/assessment/measures/stature.ts';
import { consentActs, consentKinds, wordingSources } from '#core/episode/consent.ts';
import { goalFields, restingPressureFields, testToFailureFields } from '#core/episode/visit-fields.ts';
import { detailChangeFields } from '#core/record/patient-details.ts';
import { screeningFields } from '#core/record/staff-fields.ts';
import { screeningSheetVersion } from '#core/screening/items.ts';
import type { Access } from '#data/access.ts';
import { measurementsOf, recordMeasurement } from '#data/assessment/measurements.ts';
import { visitOfMeasuring } from '#data/episode/visits.ts';
import { type Patient, patientOf } from '#data/patients/people.ts';
import { newestScreening, recordAnswers } from '#data/screening/screenings.ts';
import { saveDetails } from '../patients/save-details.ts';
import { beginEpisode } from './begin-episode.ts';
import { saveFormulaSex, saveHome, saveReason, saveUsual } from './first-visit-profile.ts';
import { recordConsentOf } from './record-consent.ts';

/** What the page sends. Each part is checked where it is saved, so that none stands in another's way. */
export const firstVisitInput = z.strictObject({
  details: z.unknown().optional(),
  /** Version of the care profile that was read; null where there was none. Left out, nobody read one. */
  seenProfile: z.number().int().nullable().optional(),
  /** Why the patient comes. */
  reason: z.unknown().optional(),
  home: z.unknown().optional(),
  goal: z.unknown().optional(),
  consents: z.array(z.unknown()).max(20).default([]),
  screening: z.unknown().optional(),
  joints: z.array(z.unknown()).max(2).default([]),
  pressure: z.unknown().optional(),
  mass: z.unknown().optional(),
  stature: z.unknown().optional(),
  /** Coefficients of the body formulas. */
  formulaSex: z.unknown().optional(),
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
    ({ id: _i, recordedAt: _a, recordedBy: _b, confirmed: _c, answeredAtHome: _h, ...rest }) => {
      const { visitId: _v, atDistance: _d, ...of } = rest;
      return of;
    },
  );
  if (bare.some((value) => isSame(value, row))) return false;
  const questions = unlikely(row, known);
  if (questions.length > 0 && !isConfirmed)
    throw new Problem('not-confirmed', questions.join(' '), { questions });
  const visitId = await visitOfMeasuring(access, patientId, row.day);
  await recordMeasurement(access, patientId, row, isConfirmed, { visitId });
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

type Save = (sent: unknown) => Promise<boolean>;

/** The part of a visit, where something of it was sent. */
const oneOf =
  (visit: FirstVisit) =>
  (part: keyof FirstVisit, title: string, save: Save): readonly VisitPart[] =>
    visit[part] === undefined || visit[part] === null
      ? []
      : [{ part, title, save: async () => save(visit[part]) }];

const measuredParts = (
  access: Access,
  patientId: string,
  visit: FirstVisit,
  isConfirmed: boolean,
): readonly VisitPart[] => {
  const { day } = access;
  const one = oneOf(visit);
  const save = (row: Measurement) => saveMeasured(access, patientId, row, isConfirmed);
  return [
    ...one('pressure', 'Blood pressure', (sent) =>
      save({ kind: 'blood-pressure', day, ...checked(restingPressureFields, sent), position: 'seated' }),
    ),
    ...one('mass', 'Weight', (sent) => save({ kind: 'body-mass', day, ...checked(bodyMass.fields, sent) })),
    ...one('stature', 'Height', (sent) => save({ kind: 'stature', day, ...checked(stature.fields, sent) })),
    ...one('test', 'Test to failure', (sent) =>
      save({ kind: 'repetitions-to-failure', day, ...checked(testToFailureFields, sent) }),
    ),
  ];
};

/** In the order in which one rests on another. */
export const partsOf = (
  access: Access,
  { id }: Patient,
  visit: FirstVisit,
  isConfirmed: boolean,
): readonly VisitPart[] => {
  const one = oneOf(visit);
  return [
    ...one('details', 'Personal details', async (changes) => {
      const sent = checked(detailChangeFields, { changes });
      return (await saveDetails(access, id, sent.changes, isConfirmed)).length > 0;
    }),
    ...one('reason', 'Why they come', (sent) => saveReason(access, id, sent, visit.seenProfile)),
    ...(visit.reason || visit.goal
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
    ...one('home', 'At home', (sent) => saveHome(access, id, sent, visit.seenProfile)),
    ...one('formulaSex', 'Sex used in body formulas', (sent) => saveFormulaSex(access, id, sent)),
    ...measuredParts(access, id, visit, isConfirmed),
  ];
};
