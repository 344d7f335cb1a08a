/** Sessions a clinician stood beside and entered: which one a group hour holds of a person, and whose they were by day. */
import { createHash } from 'node:crypto';
import { and, asc, eq, gte, sql } from 'drizzle-orm';
import type { SessionEntry } from '#core/record/entries.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { authUser, trainingSession } from '../schema/schema.ts';
import { isConfirmation } from './confirmed-id.ts';
import { entryOf, sessionsSince } from './sent-sessions.ts';

/**
 * The same from every tablet: sent twice, a session of an hour is one, or a conflict that is shown. On each day an hour
 * is moved to it is another one.
 */
export const entryIdOfHour = (hourId: string, patientId: string, day: Day): string =>
  `group-${createHash('sha256').update(`${hourId} ${patientId} ${day}`).digest('hex').slice(0, 40)}`;

const enteredNames = patientQuery((db) =>
  db
    .select({
      entryId: trainingSession.entryId,
      amends: trainingSession.amends,
      day: trainingSession.day,
      name: authUser.name,
    })
    .from(trainingSession)
    .innerJoin(authUser, eq(authUser.id, trainingSession.enteredBy))
    .where(
      and(
        ofPatient(trainingSession),
        eq(trainingSession.enteredAs, 'clinic-supervised'),
        gte(trainingSession.day, sql.placeholder('since')),
      ),
    )
    .orderBy(asc(trainingSession.arrivedAt)),
);

export interface SupervisedSession {
  readonly sessionId: string;
  /** As it counts now. */
  readonly entry: SessionEntry;
  readonly arrivedAt: number;
  /** Who stood beside it: who entered the first of its rows; null = an account that is gone. */
  readonly by: string | null;
  /** Who put it right since, each once; to confirm its time is no correction. */
  readonly correctedBy: readonly string[];
}

/** The session of this person in the hour, as it was last corrected; null = none was entered. */
export const sessionOfHour = async (
  access: Access,
  patientId: string,
  hourId: string,
  day: Day,
): Promise<SupervisedSession | null> => {
  const rows = await sessionsSince(access, patientId, { since: day });
  const first = rows.find(({ entryId }) => entryId === entryIdOfHour(hourId, patientId, day));
  if (!first) return null;
  const chain = [first];
  for (;;) {
    const last = chain.at(-1)!;
    const next = rows.find(({ amends }) => amends === last.entryId);
    if (!next) break;
    chain.push(next);
  }
  const row = chain.at(-1)!;
  const names = new Map(
    (await enteredNames(access, patientId, { since: day })).map(({ entryId, name }) => [entryId, name]),
  );
  const corrections = chain.slice(1).filter((one) => !isConfirmation(one));
  return {
    sessionId: row.id,
    entry: await entryOf(access, patientId, row),
    arrivedAt: row.arrivedAt,
    by: names.get(first.entryId) ?? null,
    correctedBy: [...new Set(corrections.flatMap(({ entryId }) => names.get(entryId) ?? []))],
  };
};

export interface SupervisedBy {
  readonly day: Day;
  readonly name: string;
  /** "corrected": put right what somebody else may have stood beside. */
  readonly did: 'supervised' | 'corrected';
}

/** Who stood beside the work, and who corrected it since, by day. */
export const supervisedSince = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly SupervisedBy[]> => {
  const rows = (await enteredNames(access, patientId, { since })).filter((row) => !isConfirmation(row));
  const told = rows.map(({ day, name, amends }): SupervisedBy => {
    return { day, name, did: amends === null ? 'supervised' : 'corrected' };
  });
  return [...new Map(told.map((one) => [`${one.day} ${one.did} ${one.name}`, one])).values()];
};
