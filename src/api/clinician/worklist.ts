/** Who needs a clinician, most pressing first, each line with the fact that put it there. */
import { z } from 'zod';
import { type Day, daysBetween, isDay } from '#core/time/day.ts';
import { worklistGroups } from '#core/worklist/groups.ts';
import { worklistItemKinds } from '#core/worklist/item.ts';
import { sentenceOf } from '#core/worklist/sentences.ts';
import { colleaguesOf } from '#data/accounts/staff.ts';
import { digestOfIds, noteRead } from '#data/audit/audit.ts';
import { sitesOf } from '#data/clinic/sites.ts';
import { closedToMe } from '#data/patients/care-team.ts';
import { handleWorklistItem } from '#data/worklist/handle-worklist-item.ts';
import { worklistCounts, worklistPage } from '#data/worklist/worklist.ts';
import type { StoredItem } from '#data/worklist/worklist-cells.ts';
import { groupLines } from '#data/worklist/worklist-groups.ts';
import { Problem } from '../errors.ts';
import { clinicianProcedure, recordProcedure, router } from '../trpc.ts';

const shown = (row: StoredItem, today: Day) => ({
  key: row.key,
  kind: row.kind,
  sentence: sentenceOf({ kind: row.kind, joint: row.joint as never, facts: row.facts }, today),
  since: row.since,
  joint: row.joint,
  decisionId: row.decisionId,
  acknowledgedBy: row.acknowledgedBy,
  assignedTo: row.assignedTo,
  assignedName: row.assignedName,
});

const cursor = z.object({ rank: z.number().int(), since: z.number().int(), patientId: z.string().max(64) });

/** Longest an item may be snoozed. */
const longestSnoozeDays = 14;

/** Longest list of a group that is shown by name. */
const longestGroupList = 500;

export const worklistRouter = router({
  list: clinicianProcedure
    .input(
      z
        .object({
          after: cursor.nullable().default(null),
          limit: z.number().int().min(1).max(100).default(50),
          kind: z.enum(worklistItemKinds).nullable().default(null),
          mine: z.boolean().default(false),
          /** Taken on by, or given to, this clinician. */
          assignedTo: z.string().max(64).nullable().default(null),
          siteId: z.string().max(64).nullable().default(null),
        })
        .prefault({}),
    )
    .query(async ({ ctx, input }) => {
      const { access } = ctx;
      // A record kept to a team stays out of a colleague's list, except for danger, which somebody must see.
      const closed = await closedToMe(access);
      const query = { ...input, assignedTo: input.mine ? access.actorId : input.assignedTo, closed };
      const { lines, next } = await worklistPage(access, query);
      const counts = await worklistCounts(access, query);
      const ids = lines.map((line) => line.patientId);
      noteRead(access, { subject: 'worklist', detail: { count: ids.length, ids: digestOfIds(ids) } });
      return {
        day: access.day,
        ...counts,
        closed: closed.size,
        next,
        lines: lines.map(({ worklistItems, ...line }) => {
          const [item, ...others] = worklistItems.map((row) => shown(row, access.day));
          return { ...line, item: item!, others };
        }),
      };
    }),

  /** How many patients stand in each group for this reader, and those of one group by name. */
  groups: clinicianProcedure
    .input(z.object({ group: z.enum(worklistGroups).nullable().default(null) }).prefault({}))
    .query(async ({ ctx, input }) => {
      const { access } = ctx;
      const lines = await groupLines(access, await closedToMe(access));
      const shown = lines.filter(({ group }) => group === input.group).slice(0, longestGroupList);
      if (input.group !== null)
        noteRead(access, {
          subject: 'worklist-group',
          detail: { count: shown.length, ids: digestOfIds(shown.map(({ patientId }) => patientId)) },
        });
      return {
        counts: worklistGroups.map((group) => {
          const mine = lines.filter((line) => line.group === group);
          return {
            group,
            count: mine.length,
            until: mine.flatMap(({ until }) => until ?? []).sort()[0] ?? null,
            names: [...new Set(mine.flatMap(({ assignedNames }) => assignedNames))].sort(),
          };
        }),
        lines: shown,
      };
    }),

  /** What the list can be narrowed to. */
  filters: clinicianProcedure.query(async ({ ctx }) => ({
    clinicians: await colleaguesOf(ctx.access),
    sites: (await sitesOf(ctx.access)).filter((site) => site.closedAt === null),
  })),

  acknowledge: recordProcedure
    .input(z.object({ key: z.string().max(200), reason: z.string().trim().max(300).default('') }))
    .mutation(({ ctx, input }) =>
      handled(ctx.access, ctx.patient.id, { ...input, act: 'acknowledge', until: null, assignee: null }),
    ),

  /** Takes an item; one clinician at a time. */
  take: recordProcedure.input(z.object({ key: z.string().max(200) })).mutation(({ ctx, input }) =>
    handled(ctx.access, ctx.patient.id, {
      key: input.key,
      act: 'assign',
      until: null,
      assignee: { id: ctx.access.actorId, name: ctx.access.actorName },
      reason: '',
    }),
  ),

  /** Gives an item to a colleague of the clinic. */
  assign: recordProcedure
    .input(z.object({ key: z.string().max(200), userId: z.string().max(64) }))
    .mutation(async ({ ctx, input }) => {
      const colleague = (await colleaguesOf(ctx.access)).find((one) => one.userId === input.userId);
      if (!colleague) throw new Problem('not-found', 'There is no such clinician in your clinic.');
      return handled(ctx.access, ctx.patient.id, {
        key: input.key,
        act: 'assign',
        until: null,
        assignee: { id: colleague.userId, name: colleague.name },
        reason: '',
      });
    }),

  unsnooze: recordProcedure
    .input(z.object({ keys: z.array(z.string().max(200)).min(1).max(60) }))
    .mutation(({ ctx, input }) =>
      ctx.access.store.write(async () => {
        for (const key of input.keys)
          await handled(ctx.access, ctx.patient.id, {
            key,
            act: 'unsnooze',
            until: null,
            assignee: null,
            reason: '',
          });
      }),
    ),

  snooze: recordProcedure
    .input(
      z.object({
        key: z.string().max(200),
        until: z.string().max(10),
        reason: z.string().trim().min(1).max(300),
      }),
    )
    .mutation(({ ctx, input }) => {
      const ahead = isDay(input.until) ? daysBetween(ctx.access.day, input.until) : -1;
      if (ahead < 0 || ahead > longestSnoozeDays) {
        throw new Problem('refused', `Enter a day from today to ${longestSnoozeDays} days ahead.`, {
          refusals: [
            {
              field: 'input.until',
              code: 'outside-validity',
              reason: `Enter a day from today to ${longestSnoozeDays} days ahead.`,
            },
          ],
        });
      }
      return handled(ctx.access, ctx.patient.id, { ...input, act: 'snooze', assignee: null });
    }),
});

const handled = async (...args: Parameters<typeof handleWorklistItem>): Promise<void> => {
  const answer = await handleWorklistItem(...args);
  if (answer === 'no-such-matter')
    throw new Problem('conflict', 'This item has been settled or has changed. Reload the worklist.');
  if (answer === 'danger')
    throw new Problem('refused', 'An urgent item cannot be snoozed. Act on it or assign it to a colleague.');
};
