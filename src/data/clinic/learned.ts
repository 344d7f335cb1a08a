/** What each person of the clinic adds to its figures, read one after another; in between others are answered. */
import { setImmediate } from 'node:timers/promises';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { personMeasured } from '#core/assessment/course/measured.ts';
import { type LearnedOfPerson, learnedOf, type Period } from '#core/clinic/learning/learned-of-person.ts';
import { daysOff } from '#core/episode/episode-status.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { measurementsOf } from '../assessment/measurements.ts';
import { dayAt, midnightOf } from '../civil-time.ts';
import { dangerRecordOf } from '../danger/danger-record.ts';
import { readTogether, togetherOf } from '../database/read-together.ts';
import { boardDays } from '../decision/followed-decisions.ts';
import { episodesOf } from '../episode/episodes.ts';
import { clinicOf, patientOf, peopleOf } from '../patients/people.ts';
import { recordSince } from '../patients/record.ts';
import { recordQueries } from '../patients/record-queries.ts';
import { type Prescription, prescriptionsOf } from '../prescribing/prescriptions.ts';

const together = togetherOf(recordQueries);

/** What acted by itself was signed in the moment it was made, for a decision. */
const isSignedByHand = ({ signedAt, recordedAt, decisionId }: Prescription): boolean =>
  signedAt !== null && (decisionId === null || signedAt > recordedAt);

const ofPerson = async (access: Access, id: string, period: Period): Promise<LearnedOfPerson | null> => {
  const [patient, record] = [await patientOf(access, id), await recordSince(access, id, period.since)];
  if (!patient || !record) return null;
  const measured = await measurementsOf(access, id);
  const prescriptions = await prescriptionsOf(access, id);
  const person = {
    record,
    danger: await dangerRecordOf(access, id),
    off: daysOff(await episodesOf(access, id), period.since, period.today),
    signedAt: prescriptions.filter(isSignedByHand).map(({ signedAt }) => signedAt!),
    outcomeSince: (from: string) =>
      outcomeLines(
        measured.filter(({ day }) => day >= from),
        record.effusions.filter(({ day }) => day >= from),
        personMeasured(patient),
      ).map(({ change }) => change.verdict),
  };
  return learnedOf(person, period);
};

export const learnedOfClinic = async (access: Access): Promise<readonly LearnedOfPerson[]> => {
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  const since = addDays(access.day, -boardDays);
  const dayOf = (instant: number) => dayAt(instant, zone);
  const period: Period = { since, today: access.day, from: midnightOf(since, zone), dayOf };
  const all: LearnedOfPerson[] = [];
  for (const { id } of await peopleOf(access)) {
    const read = () => ofPerson(access, id, period);
    const found = await readTogether(access, id, together, read, { since });
    if (found) all.push(found);
    await setImmediate();
  }
  return all;
};
