/** Group hours: planned, corrected by a later entry, cancelled or entered in error, and who belongs to each. */
import { z } from 'zod';
import { checked } from '#api/inputs/checked.ts';
import {
  type GroupHour,
  type GroupHourOnRecord,
  groupHourFields,
  groupReasonFields,
  groupStates,
  mostInGroup,
} from '#core/clinic/group-hour.ts';
import { asksNothing } from '#core/episode/suspensions.ts';
import type { Access } from '#data/access.ts';
import { digestOfIds, noteRead } from '#data/audit/audit.ts';
import { cliniciansOf } from '#data/clinic/covering-clinicians.ts';
import { changeGroupHour, groupHoursOf, setGroupMember, writeGroupHour } from '#data/clinic/group-hours.ts';
import { namesOpenToMe } from '#data/clinic/incidents.ts';
import { careAroundOf } from '#data/episode/care-around.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { Problem } from '../../errors.ts';
import { madeId, nothing } from '../../outputs.ts';
import { clinicianProcedure, nameProcedure, recordProcedure, router } from '../../trpc.ts';

const id = z.string().min(1).max(64);

export const groupHourWith = async (access: Access, hourId: string): Promise<GroupHourOnRecord> => {
  const found = (await groupHoursOf(access)).find((one) => one.id === hourId);
  if (!found) throw new Problem('not-found', 'There is no such group hour in your clinic.');
  return found;
};

const readHour = async (
  access: Access,
  value: unknown,
): Promise<{ row: GroupHour; clinicianName: string }> => {
  const row = checked(groupHourFields, value);
  const clinician = (await cliniciansOf(access)).find((one) => one.id === row.clinicianId);
  if (!clinician) throw new Problem('refused', 'Choose a clinician of your clinic who takes the hour.');
  return { row, clinicianName: clinician.name };
};

const meanwhile = 'Somebody changed this group hour meanwhile. Reload the page; what you typed is not saved.';

const ended = {
  cancelled: 'This hour is cancelled. Plan it again before you change who belongs to it.',
  'entered-in-error': 'This hour was entered in error. Plan it again before you change who belongs to it.',
} as const;

const stateInPlace = {
  cancelled: 'It is cancelled already. Reload the page.',
  'entered-in-error': 'It is marked as entered in error already. Reload the page.',
  'planned-again': 'It is planned. Reload the page.',
} as const;

/** Where it may not join, why. */
const whyNotJoin = async (
  access: Access,
  hour: GroupHourOnRecord,
  patientId: string,
): Promise<string | null> => {
  if (hour.ended !== null) return ended[hour.ended];
  if (hour.members.includes(patientId)) return 'This person belongs to the group already. Reload the page.';
  if (hour.members.length >= mostInGroup)
    return `A group has up to ${mostInGroup} people. Remove somebody first, or plan a second hour.`;
  const care = await careAroundOf(access, patientId, await newestScreening(access, patientId));
  return asksNothing(care) && care.episodeStatus.state === 'closed'
    ? 'Care of this person has ended. Open an episode of care before the person joins a group.'
    : null;
};

/** Names of those whose records the caller may open; who is kept to a care team is counted and not named. */
const told = async (access: Access, hour: GroupHourOnRecord) => {
  const names = await namesOpenToMe(access, [...hour.members, ...hour.left]);
  const people = (ids: readonly string[]) =>
    ids.map((patientId) => ({ patientId, name: names.get(patientId) ?? null }));
  return { ...hour, members: people(hour.members), left: people(hour.left) };
};

export const groupHoursRouter = router({
  list: clinicianProcedure.query(async ({ ctx: { access } }) => {
    const hours = await groupHoursOf(access);
    const ids = hours.map((one) => one.id);
    noteRead(access, { subject: 'group-hours', detail: { count: ids.length, ids: digestOfIds(ids) } });
    return hours.map(({ members, left: _, ...hour }) => ({ ...hour, people: members.length }));
  }),

  get: clinicianProcedure.input(z.object({ hourId: id })).query(async ({ ctx: { access }, input }) => {
    const hour = await groupHourWith(access, input.hourId);
    noteRead(access, { subject: 'group-hour', subjectId: hour.id });
    return told(access, hour);
  }),

  /** Who may take an hour. */
  clinicians: clinicianProcedure.query(({ ctx: { access } }) => cliniciansOf(access)),

  plan: clinicianProcedure
    .input(z.object({ hour: z.unknown() }))
    .output(madeId)
    .mutation(async ({ ctx, input }) => {
      const written = await readHour(ctx.access, input.hour);
      return writeGroupHour(ctx.access, { ...written, replaces: null });
    }),

  /** Stands in the place of version `seen`. */
  correct: clinicianProcedure
    .input(z.object({ hourId: id, seen: z.number().int().min(1), hour: z.unknown() }))
    .output(madeId)
    .mutation(async ({ ctx: { access }, input }) => {
      const written = await readHour(access, input.hour);
      return access.store.write(async () => {
        const replaces = await groupHourWith(access, input.hourId);
        if (replaces.entry.version !== input.seen) throw new Problem('conflict', meanwhile);
        return writeGroupHour(access, { ...written, replaces });
      });
    }),

  change: clinicianProcedure
    .input(z.object({ hourId: id, state: z.enum(groupStates), reason: z.unknown() }))
    .output(nothing)
    .mutation(({ ctx: { access }, input: { hourId, state, ...input } }) => {
      const { reason } = checked(groupReasonFields, { reason: input.reason });
      return access.store.write(async () => {
        const hour = await groupHourWith(access, hourId);
        if ((hour.ended ?? 'planned-again') === state) throw new Problem('conflict', stateInPlace[state]);
        await changeGroupHour(access, hour, state, reason);
      });
    }),

  add: recordProcedure
    .input(z.object({ hourId: id }))
    .output(nothing)
    .mutation(({ ctx: { access, patient }, input }) =>
      access.store.write(async () => {
        const hour = await groupHourWith(access, input.hourId);
        const why = await whyNotJoin(access, hour, patient.id);
        if (why) throw new Problem('refused', why);
        await setGroupMember(access, hour.id, patient.id, true);
      }),
    ),

  /** Also of a record kept to a care team: nothing of it is read. */
  remove: nameProcedure
    .input(z.object({ hourId: id }))
    .output(nothing)
    .mutation(({ ctx: { access, patient }, input }) =>
      access.store.write(async () => {
        const hour = await groupHourWith(access, input.hourId);
        if (!hour.members.includes(patient.id))
          throw new Problem(
            'conflict',
            'This person does not belong to the group any more. Reload the page.',
          );
        await setGroupMember(access, hour.id, patient.id, false);
      }),
    ),
});
