/**
 * The worklist, kept on write: whoever writes something that may change it says so, and just before
 * the transaction commits the patient's items, or all of the clinic's, are worked out again.
 */

import { and, asc, eq } from 'drizzle-orm';
import { engineSettings } from '#core/decision/settings.ts';
import { occlusionSettings } from '#core/prescribing/occlusion/settings.ts';
import { screeningSettings } from '#core/screening/settings.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import { dueItems, rankOf } from '#core/worklist/due-items.ts';
import { type DueAfter, type DueItem, dangers } from '#core/worklist/item.ts';
import { worklistSettings } from '#core/worklist/settings.ts';
import type { Access } from '../access.ts';
import { settingsOf } from '../clinic/clinic-settings.ts';
import type { Db } from '../database/connection.ts';
import { insertRows } from '../database/insert-rows.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { readTogether, togetherOf } from '../database/read-together.ts';
import { peopleOf } from '../patients/people.ts';
import { planQueries } from '../plan/plan-queries.ts';
import { worklistItem, worklistItemAction, worklistStrip } from '../schema/schema.ts';
import { itemsOfPatient } from './items-of-patient.ts';
import { patientStateOf } from './patient-state.ts';
import { keepStandingWith, keptStanding, standAnew } from './standings.ts';
import { stripFactsOf } from './strip-facts.ts';
import { worklistQueries } from './worklist-queries.ts';
import { patientStates } from './worklist-states.ts';

const dueAfter = (own: SettingValues): DueAfter => {
  const lists = [engineSettings, screeningSettings, occlusionSettings, worklistSettings];
  const values: SettingValues = Object.assign({}, ...lists.map(defaultsOf), own);
  return {
    missingMornings: values['worklist-missing-mornings']!,
    screeningDays: values['screening-valid-days']!,
    pressureDays: values['occlusion-pressure-valid-days']!,
    baselineDays: values['baseline-expiry']!,
  };
};

type Action = typeof worklistItemAction.$inferSelect;

/** What has been done about an item as it stands; actions on an earlier item of the same key do not count. */
const handling = (row: DueItem, actions: readonly Action[]) => {
  const mine = actions.filter((action) => action.itemKey === row.key && action.itemSince === row.since);
  const lastOf = (...acts: readonly Action['act'][]) =>
    mine.filter((action) => acts.includes(action.act)).at(-1) ?? null;
  const assigned = lastOf('assign', 'unassign');
  const seen = lastOf('acknowledge', 'unacknowledge');
  return {
    acknowledgedBy: seen?.act === 'acknowledge' ? seen.doneName : null,
    assignedTo: assigned?.assignee ?? null,
    assignedName: assigned?.assigneeName ?? null,
    snoozedUntil: dangers.includes(row.kind) ? null : (lastOf('snooze', 'unsnooze')?.until ?? null),
  };
};

/** Whoever acknowledged a danger, or took it on, keeps it from passing to the covering clinician. */
const isHandledElsewhere = (row: DueItem, actions: readonly Action[]): boolean =>
  row.unlessHandled !== undefined &&
  actions.some(
    (action) =>
      action.itemKey === row.unlessHandled &&
      action.itemSince === row.since &&
      (action.act === 'acknowledge' || (action.act === 'assign' && action.assignee === action.doneBy)),
  );

const isSettledByAcknowledging = (row: DueItem, actions: readonly Action[]): boolean =>
  row.untilAcknowledged === true && handling(row, actions).acknowledgedBy !== null;

export type WorklistItemRow = typeof worklistItem.$inferInsert;

const worklistItemRows = (
  clinicId: string,
  patientId: string,
  worklistItems: readonly DueItem[],
  actions: readonly Action[],
): readonly WorklistItemRow[] =>
  worklistItems
    .filter((row) => !isHandledElsewhere(row, actions) && !isSettledByAcknowledging(row, actions))
    .map(({ unlessHandled: _unless, untilAcknowledged: _until, passesTo, showsAt, ...row }) => {
      const handled = handling(row, actions);
      const passed = handled.assignedTo === null && passesTo ? passesTo : null;
      return {
        clinicId,
        patientId,
        ...row,
        showsAt: showsAt ?? null,
        rank: rankOf(row.kind),
        ...handled,
        ...(passed ? { assignedTo: passed.id, assignedName: passed.name } : {}),
      };
    });

const itemActionRows = patientQuery((db) =>
  db
    .select()
    .from(worklistItemAction)
    .where(ofPatient(worklistItemAction))
    .orderBy(asc(worklistItemAction.doneAt)),
);

const actionsOf = (access: Access, patientId: string): Promise<readonly Action[]> =>
  Promise.resolve(itemActionRows(access, patientId));

/** Most writes change no item; comparing is cheaper than writing the same rows and their indexes again. */
const isSame = (before: readonly WorklistItemRow[], after: readonly WorklistItemRow[]): boolean => {
  const told = (rows: readonly WorklistItemRow[]) =>
    rows.map((row) => JSON.stringify(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1)))).sort();
  return before.length === after.length && told(before).join() === told(after).join();
};

const currentStrip = patientQuery((db) =>
  db.select({ facts: worklistStrip.facts }).from(worklistStrip).where(ofPatient(worklistStrip)),
);

/** Most writes leave the four weeks as they were. */
const keepStrip = async (tx: Db, access: Access, patientId: string): Promise<void> => {
  const facts = await stripFactsOf(access, patientId);
  const [kept] = await currentStrip(access, patientId);
  if (kept && JSON.stringify(kept.facts) === JSON.stringify(facts)) return;
  await tx
    .insert(worklistStrip)
    .values({ clinicId: access.clinicId, patientId, facts })
    .onConflictDoUpdate({ target: worklistStrip.patientId, set: { facts } });
};

/** One patient's items worked out from the record, as they should stand. */
const workedOut = async (access: Access, patientId: string): Promise<readonly WorklistItemRow[]> => {
  const state = await patientStateOf(access, patientId);
  const worklistItems = dueItems(state, dueAfter(await settingsOf(access)));
  return worklistItemRows(access.clinicId, patientId, worklistItems, await actionsOf(access, patientId));
};

const refresh = async (tx: Db, access: Access, patientId: string): Promise<void> => {
  const rows = await workedOut(access, patientId);
  await keepStrip(tx, access, patientId);
  await keepStandingWith(tx, access, patientId, rows);
  if (isSame(await itemsOfPatient(access, patientId), rows)) return;
  await tx
    .delete(worklistItem)
    .where(and(eq(worklistItem.clinicId, access.clinicId), eq(worklistItem.patientId, patientId)));
  insertRows(tx, worklistItem, rows);
};

const together = togetherOf([
  ...planQueries,
  ...worklistQueries,
  ...[itemActionRows, currentStrip, keptStanding].map((query) => ({ query })),
]);

/** Works out one patient's items and puts them in place of the old ones. */
export const refreshWorklistItems = (access: Access, patientId: string): Promise<void> =>
  access.store.write((tx) => readTogether(access, patientId, together, () => refresh(tx, access, patientId)));

/** For a file as it was, which holds no items: works them out, so that they are asked for as ever. */
export const putItemsOf = async (access: Access, patientId: string): Promise<void> => {
  const rows = await readTogether(access, patientId, together, () => workedOut(access, patientId));
  insertRows(access.store.read, worklistItem, rows);
};

/** Every item of the clinic worked out from the record, as it should stand. */
export const rebuiltWorklistItems = async (access: Access): Promise<readonly WorklistItemRow[]> => {
  const after = dueAfter(await settingsOf(access));
  const actions = await access.store.read
    .select()
    .from(worklistItemAction)
    .where(eq(worklistItemAction.clinicId, access.clinicId))
    .orderBy(asc(worklistItemAction.doneAt));
  const states = await patientStates(access);
  return [...states].flatMap(([patientId, state]) =>
    worklistItemRows(
      access.clinicId,
      patientId,
      dueItems(state, after),
      actions.filter((action) => action.patientId === patientId),
    ),
  );
};

/** Throws the clinic's items away and writes them anew. Returns how many there are. */
export const rebuildWorklist = (access: Access): Promise<number> =>
  access.store.write(async (tx) => {
    const rows = await rebuiltWorklistItems(access);
    await tx.delete(worklistItem).where(eq(worklistItem.clinicId, access.clinicId));
    for (let from = 0; from < rows.length; from += 200)
      await tx.insert(worklistItem).values(rows.slice(from, from + 200));
    const people = await peopleOf(access);
    for (const { id } of people) await keepStrip(tx, access, id);
    await standAnew(
      tx,
      access,
      people.map(({ id }) => id),
    );
    return rows.length;
  });
