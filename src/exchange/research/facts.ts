/** What a research export reads of one person: coded answers alone, bands where a figure could tell somebody apart. */
import { indexCorrections } from '#core/corrections/correction.ts';
import { consentState } from '#core/episode/consent.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { ageYears, type Day, daysBetween } from '#core/time/day.ts';
import type { RecordRows } from '#data/patients/record-tables.ts';
import type { PersonRecord } from '../person-record.ts';
import { notKnown, painBand, phaseBand, shareBand, stiffnessBand } from './bands.ts';

/** Files of rows that name nobody and belong to no other row, with the columns of each after those of its class. */
export const rowFiles = {
  sessions: ['method', 'kind', 'painDuring', 'painBefore', 'painAfter', 'load', 'phase'],
  mornings: ['pain', 'stiffness', 'flare', 'phase'],
  decisions: ['decision', 'cause', 'phase'],
  measurements: ['kind', 'against', 'phase'],
} as const;
export type RowFile = keyof typeof rowFiles;

export interface PersonFacts {
  readonly id: string;
  readonly sex: string;
  readonly ageYears: number;
  readonly joint: Joint;
  readonly diagnosis: string;
  readonly isInflammatory: boolean;
  readonly firstDay: Day;
  readonly sessions: number;
  readonly days: number;
  /** Mean of the last mornings less that of the first; null = too few answered. */
  readonly painChange: number | null;
  readonly rows: Readonly<Record<RowFile, readonly (readonly string[])[]>>;
}

export type Left = 'refused' | 'merged' | 'no course';

type Rows<T extends keyof RecordRows> = RecordRows[T];
type EntryRow = { readonly id: string; readonly entryId: string; readonly amends: string | null };

/** Without what was entered in error, unless that still waits to be looked at, and of what was sent anew the last alone. */
const standing = (rows: RecordRows) => {
  const seen = new Set(rows.plan_seen.map(({ correctionId }) => correctionId));
  const index = indexCorrections(
    rows.correction.map((mark) => ({ ...mark, isWaiting: mark.waits && !seen.has(mark.id) })),
  );
  const counts = (id: string): boolean => index.stateOf(id) !== 'left-out';
  return {
    made: <R extends { readonly id: string }>(list: readonly R[]) => list.filter(({ id }) => counts(id)),
    sent: <R extends EntryRow>(list: readonly R[]) => {
      const amended = new Set(list.map(({ amends }) => amends));
      return list.filter(({ id, entryId }) => counts(id) && counts(entryId) && !amended.has(entryId));
    },
  };
};

/** Consents without which nothing goes to others, also not without a name. */
const asksFor = ['record-keeping', 'sharing', 'export'] as const;

const isRefused = ({ consent }: RecordRows): boolean => {
  const said = consent
    .map((row) => ({ ...row, at: row.recordedAt, by: row.byName }))
    .sort((one, other) => one.at - other.at);
  return asksFor.some((kind) => ['refused', 'withdrawn'].includes(consentState(said, kind)));
};

const isMerged = ({ patient_merge: merges }: RecordRows): boolean =>
  merges.reduce<Rows<'patient_merge'>[number] | null>(
    (last, one) => (one.act === 'plan-chosen' || (last && last.version > one.version) ? last : one),
    null,
  )?.act === 'merged';

const newestProfile = ({ care_profile: profiles }: RecordRows) =>
  profiles.reduce<Rows<'care_profile'>[number] | null>(
    (last, one) => (last && last.version > one.version ? last : one),
    null,
  );

const mean = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0) / list.length;

/** The first load of each exercise is what the later ones are told against. */
const loadsAgainst = (sets: Rows<'set_log'>, order: readonly string[]): ReadonlyMap<string, number> => {
  const place = new Map(order.map((id, at) => [id, at]));
  const first = new Map<string, number>();
  const shares = new Map<string, number[]>();
  const inOrder = sets
    .filter((set) => set.loadKg !== null && set.loadKg > 0 && place.has(set.sessionId))
    .sort((one, other) => place.get(one.sessionId)! - place.get(other.sessionId)!);
  for (const { itemId, sessionId, loadKg } of inOrder) {
    if (!first.has(itemId)) first.set(itemId, loadKg!);
    const list = shares.get(sessionId) ?? [];
    list.push(loadKg! / first.get(itemId)!);
    shares.set(sessionId, list);
  }
  return new Map([...shares].map(([id, list]) => [id, mean(list)]));
};

interface Course {
  readonly rows: RecordRows;
  readonly joint: Joint;
  readonly sessions: Rows<'training_session'>;
  readonly mornings: Rows<'morning'>;
  readonly phaseOf: (day: Day) => string;
}

const sessionRows = ({ rows, joint, sessions, phaseOf }: Course): string[][] => {
  const answers = new Map(
    rows.session_joint.filter((one) => one.joint === joint).map((one) => [one.sessionId, one]),
  );
  const loads = loadsAgainst(
    rows.set_log,
    sessions.map(({ id }) => id),
  );
  const methods = new Map(rows.prescription.map(({ id, method }) => [id, method]));
  const methodOf = new Map(rows.set_log.map((set) => [set.sessionId, methods.get(set.prescriptionId)]));
  return sessions.flatMap(({ id, day, kind }) => {
    const told = answers.get(id);
    if (!told) return [];
    const pains = [told.painDuring, told.painBefore, told.painAfter].map(painBand);
    return [[methodOf.get(id) ?? notKnown, kind, ...pains, shareBand(loads.get(id) ?? null), phaseOf(day)]];
  });
};

const morningRows = ({ rows, joint, mornings, phaseOf }: Course): string[][] => {
  const days = new Map(mornings.map(({ id, day }) => [id, day]));
  return rows.morning_joint
    .filter((one) => one.joint === joint && days.has(one.morningId))
    .map(({ morningId, pain, stiffnessMinutes, flare }) => [
      painBand(pain),
      stiffnessBand(stiffnessMinutes),
      flare === null ? notKnown : flare ? 'yes' : 'no',
      phaseOf(days.get(morningId)!),
    ]);
};

const measurementRows = ({ rows, phaseOf }: Course): string[][] => {
  const first = new Map<string, number>();
  return [...standing(rows).made(rows.measurement)]
    .sort((one, other) => daysBetween(other.day, one.day) || one.recordedAt - other.recordedAt)
    .flatMap(({ kind, figure, day }) => {
      const begun = first.get(kind);
      if (begun === undefined) first.set(kind, figure);
      // The first itself says nothing but that it was taken.
      return begun === undefined || begun === 0 ? [] : [[kind, shareBand(figure / begun), phaseOf(day)]];
    });
};

const decisionRows = ({ rows, joint, phaseOf }: Course): string[][] =>
  rows.decision
    .filter((one) => one.joint === joint)
    .map(({ decision, cause, day }) => [decision, cause, phaseOf(day)]);

const fewest = 5;

const painChangeOf = ({ rows, joint, mornings }: Course): number | null => {
  const pains = new Map(
    rows.morning_joint
      .filter((one) => one.joint === joint && one.pain !== null)
      .map((one) => [one.morningId, one.pain!]),
  );
  const told = mornings.flatMap(({ id }) => pains.get(id) ?? []);
  return told.length < fewest * 2 ? null : mean(told.slice(-fewest)) - mean(told.slice(0, fewest));
};

const byDay = (one: { readonly day: Day }, other: { readonly day: Day }): number =>
  daysBetween(other.day, one.day);

/** Whose answers are coded and may go, or why not. */
export const factsOf = ({ patient, rows }: PersonRecord): PersonFacts | Left => {
  if (isMerged(rows)) return 'merged';
  if (isRefused(rows)) return 'refused';
  const profile = newestProfile(rows);
  const { sent } = standing(rows);
  const sessions = [...sent(rows.training_session)].sort(byDay);
  const mornings = [...sent(rows.morning)].sort(byDay);
  const joint = profile?.followedJoints[0] as Joint | undefined;
  const [first, last] = [sessions[0]?.day, sessions.at(-1)?.day];
  if (!profile || !joint || !first || !last) return 'no course';
  const phaseOf = (day: Day) => phaseBand(daysBetween(first, day));
  const course = { rows, joint, sessions, mornings, phaseOf };
  return {
    ...{ id: patient.id, joint, firstDay: first, sessions: sessions.length, days: daysBetween(first, last) },
    sex: profile.formulaSex ?? 'not recorded',
    ageYears: ageYears(patient.birthDay, first),
    isInflammatory: profile.inflammatoryArthritis,
    diagnosis: profile.inflammatoryArthritis ? 'inflammatory arthritis' : (profile.errorGroup ?? 'not coded'),
    painChange: painChangeOf(course),
    rows: {
      sessions: sessionRows(course),
      mornings: morningRows(course),
      decisions: decisionRows(course),
      measurements: measurementRows(course),
    },
  };
};
