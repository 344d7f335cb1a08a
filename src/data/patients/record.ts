/**
 * One patient's stored history as the core sees it. Rows become core values here and nowhere else;
 * a null score stays null.
 */
import { daysOff, withoutDaysOff } from '#core/episode/episode-status.ts';
import { plannedSessions } from '#core/prescribing/programme/planned-sessions.ts';
import type { PatientRecord, PrescriptionVersion } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { machinesOf } from '../clinic/machines.ts';
import { readTogether, togetherOf } from '../database/read-together.ts';
import { morningsOf, sessionsOf } from '../entries/logs.ts';
import { eventsOf } from '../episode/care-events.ts';
import { episodesOf } from '../episode/episodes.ts';
import { limitsOfPerson } from '../episode/limits-of-person.ts';
import { type Prescription, prescriptionsOf } from '../prescribing/prescriptions.ts';
import { programmesOf } from '../prescribing/programmes.ts';
import { signedUntilWithdrawn } from '../prescribing/signature-withdrawal.ts';
import { baselinesOf } from './baselines.ts';
import { effusionsOf } from './effusions.ts';
import { patientOf } from './people.ts';
import { engineWindowDays, recordQueries } from './record-queries.ts';

/** Signed versions only: what nobody signed was never followed. */
const signedVersions = (
  rows: readonly Prescription[],
  untilWithdrawn: ReadonlyMap<string, number>,
): readonly PrescriptionVersion[] => {
  return rows.flatMap((row) => {
    const signedAt = row.signedAt ?? untilWithdrawn.get(row.id) ?? null;
    const { id, itemId, version, dose, badDay, joints, endedAt, origin } = row;
    return signedAt === null
      ? []
      : [{ id, itemId, version, dose, badDay, joints, signedAt, endedAt, origin }];
  });
};

/** The record with its log from a day on, as much of it as `access` says was known. */
export const recordSince = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<PatientRecord | null> => {
  const person = await patientOf(access, patientId);
  if (!person) return null;
  const episodes = await episodesOf(access, patientId);
  const planBeganOn = episodes.at(-1)?.changes[0]?.on;
  return {
    patientId,
    ...(planBeganOn === undefined ? {} : { planBeganOn }),
    followedJoints: person.profile?.followedJoints ?? [],
    inflammatoryArthritis: person.profile?.inflammatoryArthritis ?? false,
    ownedLoadsKg: person.profile?.ownedLoadsKg ?? [],
    machines: await machinesOf(access),
    prescriptions: signedVersions(
      await prescriptionsOf(access, patientId),
      await signedUntilWithdrawn(access, patientId),
    ),
    sessions: await sessionsOf(access, patientId, since),
    mornings: await morningsOf(access, patientId, since),
    effusions: await effusionsOf(access, patientId),
    baselines: await baselinesOf(access, patientId),
    planned: withoutDaysOff(
      plannedSessions(await programmesOf(access, patientId), since, access.day),
      daysOff(episodes, since, access.day),
    ),
    events: await eventsOf(access, patientId),
    limits: await limitsOfPerson(access, patientId),
  };
};

const together = togetherOf(recordQueries);

/** The whole record the engine needs, read by one statement, or null when the patient is not of this clinic. */
export const recordOf = (
  access: Access,
  patientId: string,
  windowDays = engineWindowDays,
): Promise<PatientRecord | null> => {
  const since = addDays(access.day, -windowDays);
  return readTogether(access, patientId, together, () => recordSince(access, patientId, since), { since });
};
