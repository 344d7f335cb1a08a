/** Who needs a clinician, most pressing first, each line with the fact that put it there. */
import { z } from 'zod';
import { mostAgainHours } from '#core/danger/contact-again.ts';
import { dangerSettings } from '#core/danger/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { cautionsNewTo } from '#core/prescribing/proposal-parts.ts';
import { ageYears, type Day, daysBetween, isDay } from '#core/time/day.ts';
import { worklistGroups } from '#core/worklist/groups.ts';
import { worklistItemKinds } from '#core/worklist/item.ts';
import { type Strip, type StripFacts, stripOf } from '#core/worklist/strip.ts';
import { figuresOf } from '#core/worklist/strip-words.ts';
import { colleaguesOf } from '#data/accounts/staff.ts';
import { digestOfIds, noteRead } from '#data/audit/audit.ts';
import { settingsOf, settingValue } from '#data/clinic/clinic-settings.ts';
import { sitesOf } from '#data/clinic/sites.ts';
import { closedToMe } from '#data/patients/care-team.ts';
import { type Handled, handleWorklistItem, takeBack } from '#data/worklist/handle-worklist-item.ts';
import { newestMessagesOf, type WaitingDose, waitingDosesOf } from '#data/worklist/row-facts.ts';
import { type WorklistLine, worklistPageWithDanger } from '#data/worklist/worklist.ts';
import type { StoredItem } from '#data/worklist/worklist-cells.ts';
import { groupCounts, worklistCounts } from '#data/worklist/worklist-counts.ts';
import { groupLines } from '#data/worklist/worklist-groups.ts';
import { Problem } from '../errors.ts';
import { nothing } from '../outputs.ts';
import { clinicianProcedure, recordProcedure, router } from '../trpc.ts';
import { withPatientWords } from './caution-words.ts';
import { shownItem } from './worklist-item.ts';

/** What is new about a waiting dose is read before it is signed: its cautions where the one in force has not the same. */
const shownDose = ({ waiting, inForce, beside, plannedDays }: WaitingDose) => ({
  prescriptionId: waiting.id,
  dose: waiting.dose,
  badDay: waiting.badDay,
  before: inForce?.dose ?? null,
  beside,
  plannedDays,
  newCautions: withPatientWords({ cautions: cautionsNewTo(waiting.cautions, inForce?.cautions ?? []) })
    .cautions,
});

type Items = readonly [StoredItem, ...StoredItem[]];

interface RowShown {
  readonly age: number | null;
  readonly phone: string | null;
  readonly joint: Joint | null;
  readonly figures: string | null;
  readonly strip: Strip | null;
  readonly doses: readonly ReturnType<typeof shownDose>[];
  readonly message: string | null;
}

/** Of a record kept to a team the reader is not in, danger is listed and nothing else is shown. */
const hidden: RowShown = {
  age: null,
  phone: null,
  joint: null,
  figures: null,
  strip: null,
  doses: [],
  message: null,
};

const nothingKept: StripFacts = { versions: [], mornings: [], usuals: [] };

const shownRow = (
  line: WorklistLine,
  doses: readonly WaitingDose[],
  message: string | undefined,
  today: Day,
): RowShown => {
  const [first] = line.worklistItems as Items;
  const about = first.joint as Joint | null;
  const strip = stripOf({ today, about, ...(line.strip ?? nothingKept) });
  return {
    age: ageYears(line.birthDay, today),
    phone: line.phone,
    joint: strip.joint,
    figures: figuresOf(strip, today),
    strip,
    doses: doses.map(shownDose),
    message: message ?? null,
  };
};

const withItem = (lines: readonly WorklistLine[], kind: StoredItem['kind']): readonly string[] =>
  lines.flatMap(({ patientId, worklistItems }) =>
    worklistItems.some((item) => item.kind === kind) ? patientId : [],
  );

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
          limit: z.number().int().min(1).max(100).default(25),
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
      const { lines, next, dangerGoesOn } = await worklistPageWithDanger(access, query);
      const counts = await worklistCounts(access, query);
      const ids = lines.map((line) => line.patientId);
      noteRead(access, { subject: 'worklist', detail: { count: ids.length, ids: digestOfIds(ids) } });
      const open = lines.filter(({ patientId }) => !closed.has(patientId));
      const doses = await waitingDosesOf(access, withItem(open, 'awaiting-signature'));
      const messages = await newestMessagesOf(access, withItem(open, 'message'));
      return {
        day: access.day,
        readAt: access.now,
        ...counts,
        closed: closed.size,
        next,
        dangerGoesOn,
        /** Hours after which a contact that reached nobody is tried again, as proposed. */
        againHours: await settingValue(access, dangerSettings, 'contact-again-hours'),
        mostAgainHours: mostAgainHours(await settingsOf(access)),
        lines: lines.map((line) => {
          const { patientId, givenName, familyName, worklistItems } = line;
          const [item, ...others] = worklistItems.map((row) => shownItem(row, access.day));
          return {
            patientId,
            givenName,
            familyName,
            ...(closed.has(patientId)
              ? hidden
              : shownRow(line, doses.get(patientId) ?? [], messages.get(patientId), access.day)),
            item: item!,
            others,
          };
        }),
      };
    }),

  /** How many patients stand in each group for this reader, and those of one group by name. */
  groups: clinicianProcedure
    .input(z.object({ group: z.enum(worklistGroups).nullable().default(null) }).prefault({}))
    .query(async ({ ctx, input }) => {
      const { access } = ctx;
      const closed = await closedToMe(access);
      const counts = await groupCounts(access, closed);
      if (input.group === null) return { counts, lines: [] };
      const lines = await groupLines(access, closed);
      const shown = lines.filter(({ group }) => group === input.group).slice(0, longestGroupList);
      noteRead(access, {
        subject: 'worklist-group',
        detail: { count: shown.length, ids: digestOfIds(shown.map(({ patientId }) => patientId)) },
      });
      return { counts, lines: shown };
    }),

  /** What the list can be narrowed to. */
  filters: clinicianProcedure.query(async ({ ctx }) => ({
    clinicians: await colleaguesOf(ctx.access),
    sites: (await sitesOf(ctx.access)).filter((site) => site.closedAt === null),
  })),

  acknowledge: recordProcedure
    .input(z.object({ key: z.string().max(200), reason: z.string().trim().max(300).default('') }))
    .output(nothing)
    .mutation(({ ctx, input }) =>
      handled(ctx.access, ctx.patient.id, { ...input, act: 'acknowledge', until: null, assignee: null }),
    ),

  /** Takes an item; one clinician at a time. */
  take: recordProcedure
    .input(z.object({ key: z.string().max(200) }))
    .output(nothing)
    .mutation(({ ctx, input }) =>
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
    .output(nothing)
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

  /** Takes back one's own acknowledging or assigning; both stay on record. Of danger neither is taken back. */
  takeBack: recordProcedure
    .input(z.object({ key: z.string().max(200), act: z.enum(['acknowledge', 'assign']) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => refuse(await takeBack(ctx.access, ctx.patient.id, input))),

  unsnooze: recordProcedure
    .input(z.object({ keys: z.array(z.string().max(200)).min(1).max(60) }))
    .output(nothing)
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
    .output(nothing)
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

const handled = async (...args: Parameters<typeof handleWorklistItem>): Promise<void> =>
  refuse(await handleWorklistItem(...args));

const refuse = (answer: Handled): void => {
  if (answer === 'no-such-matter')
    throw new Problem('conflict', 'This item has been settled or has changed. Reload the worklist.');
  if (answer === 'danger')
    throw new Problem(
      'refused',
      'An urgent item cannot be snoozed, and that somebody has read of it is not taken back. Act on it or assign it to a colleague.',
    );
};
