/**
 * The worklist, kept on write: whoever writes something that may change it says so, and just before
 * the transaction commits the patient's matters are worked out again.
 */
import { randomUUID } from 'node:crypto';
import { and, asc, eq } from 'drizzle-orm';
import type { SettingValues } from '#core/clinic-choice.ts';
import { defaultsOf } from '#core/clinic-choice.ts';
import { engineSettings } from '#core/engine/choices.ts';
import { occlusionSettings } from '#core/occlusion/choices.ts';
import { screeningSettings } from '#core/screening/choices.ts';
import { worklistSettings } from '#core/worklist/choices.ts';
import { dueItems, rankOf } from '#core/worklist/due-matters.ts';
import { type DueAfter, type DueItem, dangers } from '#core/worklist/matter.ts';
import type { Access } from './access.ts';
import { appendAudit } from './audit.ts';
import { settingsOf } from './choices.ts';
import { patientStateOf } from './patient-state.ts';
import { matter, matterAction } from './schema/schema.ts';
import { insertRows } from './store/insert-rows.ts';
import { ofPatient, patientQuery } from './store/prepared.ts';

export const dueAfter = (own: SettingValues): DueAfter => {
  const lists = [engineSettings, screeningSettings, occlusionSettings, worklistSettings];
  const values: SettingValues = Object.assign({}, ...lists.map(defaultsOf), own);
  return {
    missingMornings: values['worklist-missing-mornings']!,
    screeningDays: values['screening-valid-days']!,
    pressureDays: values['occlusion-pressure-valid-days']!,
    baselineDays: values['baseline-expiry']!,
  };
};

type Action = typeof matterAction.$inferSelect;

/** What has been done about a matter as it stands; actions on an earlier matter of the same key do not count. */
const handling = (row: DueItem, actions: readonly Action[]) => {
  const mine = actions.filter((action) => action.matterKey === row.key && action.matterSince === row.since);
  const last = (act: Action['act']) => mine.filter((action) => action.act === act).at(-1) ?? null;
  const assigned = last('assign');
  return {
    acknowledgedBy: last('acknowledge')?.doneName ?? null,
    assignedTo: assigned?.assignee ?? null,
    assignedName: assigned?.assigneeName ?? null,
    snoozedUntil: dangers.includes(row.kind) ? null : (last('snooze')?.until ?? null),
  };
};

/** Whoever acknowledged a danger, or took it on, keeps it from passing to the deputy. */
const isHandledElsewhere = (row: DueItem, actions: readonly Action[]): boolean =>
  row.unlessHandled !== undefined &&
  actions.some(
    (action) =>
      action.matterKey === row.unlessHandled && action.matterSince === row.since && action.act !== 'snooze',
  );

const isSettledByAcknowledging = (row: DueItem, actions: readonly Action[]): boolean =>
  row.untilAcknowledged === true &&
  actions.some(
    (action) =>
      action.matterKey === row.key && action.matterSince === row.since && action.act === 'acknowledge',
  );

export type WorklistItemRow = typeof matter.$inferInsert;

export const worklistItemRows = (
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
  db.select().from(matterAction).where(ofPatient(matterAction)).orderBy(asc(matterAction.doneAt)),
);

const actionsOf = (access: Access, patientId: string): Promise<readonly Action[]> =>
  Promise.resolve(itemActionRows(access, patientId));

const currentRows = patientQuery((db) => db.select().from(matter).where(ofPatient(matter)));

/** Most writes change no matter; comparing is cheaper than writing the same rows and their indexes again. */
const isSame = (before: readonly WorklistItemRow[], after: readonly WorklistItemRow[]): boolean => {
  const told = (rows: readonly WorklistItemRow[]) =>
    rows.map((row) => JSON.stringify(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1)))).sort();
  return before.length === after.length && told(before).join() === told(after).join();
};

/** Works out one patient's matters and puts them in place of the old ones. */
export const refreshWorklistItems = (access: Access, patientId: string): Promise<void> =>
  access.store.write(async (tx) => {
    const state = await patientStateOf(access, patientId);
    const worklistItems = dueItems(state, dueAfter(await settingsOf(access)));
    const rows = worklistItemRows(
      access.clinicId,
      patientId,
      worklistItems,
      await actionsOf(access, patientId),
    );
    if (isSame(await currentRows(access, patientId), rows)) return;
    await tx.delete(matter).where(and(eq(matter.clinicId, access.clinicId), eq(matter.patientId, patientId)));
    insertRows(tx, matter, rows);
  });

/** Says, inside a write, that a patient's matters may have changed. Worked out once, before the commit. */
export const touchWorklistItems = (access: Access, patientId: string): void =>
  access.store.beforeCommit(`matters ${patientId}`, () => refreshWorklistItems(access, patientId));

export type Handled = 'done' | 'no-such-matter' | 'danger';

interface Handling {
  readonly key: string;
  readonly act: Action['act'];
  readonly until: string | null;
  readonly assignee: { readonly id: string; readonly name: string } | null;
  readonly reason: string;
}

/** Acknowledges, assigns or puts off a matter. Danger cannot be put off. */
export const handleWorklistItem = (access: Access, patientId: string, request: Handling): Promise<Handled> =>
  access.store.write(async (tx) => {
    const [row] = await tx
      .select()
      .from(matter)
      .where(
        and(
          eq(matter.clinicId, access.clinicId),
          eq(matter.patientId, patientId),
          eq(matter.key, request.key),
        ),
      );
    if (!row) return 'no-such-matter';
    if (request.act === 'snooze' && dangers.includes(row.kind)) return 'danger';
    const id = randomUUID();
    await tx.insert(matterAction).values({
      id,
      clinicId: access.clinicId,
      patientId,
      matterKey: request.key,
      matterSince: row.since,
      act: request.act,
      until: request.until,
      assignee: request.assignee?.id ?? null,
      assigneeName: request.assignee?.name ?? null,
      reason: request.reason,
      doneAt: access.now,
      doneBy: access.actorId,
      doneName: access.actorName,
    });
    await appendAudit(tx, access, {
      act: 'write',
      subject: 'matter-action',
      subjectId: id,
      patientId,
      detail: { key: request.key, act: request.act },
    });
    touchWorklistItems(access, patientId);
    return 'done';
  });
