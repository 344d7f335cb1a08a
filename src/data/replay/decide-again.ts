/** Every stored decision decided again from its stored facts, and accounted for: none is left out. */
import { and, asc, eq, getTableColumns, gt, type SQL, sql } from 'drizzle-orm';
import type { Answers } from '#core/decision/answers.ts';
import { type DecidedAgain, decidedAgain } from '#core/decision/replay.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Day } from '#core/time/day.ts';
import type { Store } from '../database/store.ts';
import { ofItsSettings } from '../decision/settings-stored.ts';
import { decision, decisionSettings } from '../schema/schema.ts';

export interface AccountedFor {
  readonly id: string;
  readonly clinicId: string;
  readonly patientId: string;
  readonly joint: Joint;
  readonly day: Day;
  readonly engineVersion: string;
  readonly before: Answers;
  readonly again: DecidedAgain;
}

export interface WhoseDecisions {
  readonly clinicId?: string | undefined;
  readonly patientId?: string | undefined;
}

const pageSize = 500;

const wanted = ({ clinicId, patientId }: WhoseDecisions, after: string): SQL | undefined =>
  and(
    gt(decision.id, after),
    clinicId === undefined ? undefined : eq(decision.clinicId, clinicId),
    patientId === undefined ? undefined : eq(decision.patientId, patientId),
  );

const pageAfter = (store: Store, whose: WhoseDecisions, after: string) =>
  store.read
    .select({ ...getTableColumns(decision), settings: decisionSettings.settings })
    .from(decision)
    .leftJoin(decisionSettings, ofItsSettings())
    .where(wanted(whose, after))
    .orderBy(asc(decision.id))
    .limit(pageSize);

type Row = Awaited<ReturnType<typeof pageAfter>>[number];

/** The file refuses a decision without its settings; one that was put in behind the product is told all the same. */
const settingsAreGone: DecidedAgain = {
  outcome: 'not-replayable',
  reason: 'the settings it was made under are not stored',
};

const accounted = (row: Row): AccountedFor => {
  const { id, clinicId, patientId, day, engineVersion, facts, settings } = row;
  const { decision: word, largestStep, today, contact, reasons } = row;
  const before: Answers = { decision: word, largestStep, today, contact, reasons };
  return {
    id,
    clinicId,
    patientId,
    joint: row.joint as Joint,
    day,
    engineVersion,
    before,
    again: settings ? decidedAgain({ facts, settings, engineVersion, answers: before }) : settingsAreGone,
  };
};

/** In the order of their ids, a page at a time, so that a file of any length needs no more memory. */
export async function* decideAllAgain(
  store: Store,
  whose: WhoseDecisions = {},
): AsyncGenerator<AccountedFor> {
  for (let after = ''; ; ) {
    const page = await pageAfter(store, whose, after);
    for (const row of page) yield accounted(row);
    if (page.length < pageSize) return;
    after = page.at(-1)!.id;
  }
}

/** Rows there are, counted by the file itself. */
export const decisionsStored = async (store: Store, whose: WhoseDecisions = {}): Promise<number> => {
  const [row] = await store.read
    .select({ count: sql<number>`count(*)` })
    .from(decision)
    .where(wanted(whose, ''));
  return row!.count;
};
