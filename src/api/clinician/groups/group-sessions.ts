/** The hour itself: everybody's plan of today on one page, and the session of each as it was done under somebody's eyes. */
import { z } from 'zod';
import { beginOf, type GroupHourOnRecord } from '#core/clinic/group-hour.ts';
import type { Access } from '#data/access.ts';
import { noteRead } from '#data/audit/audit.ts';
import { entryIdOfHour, sessionOfHour } from '#data/entries/supervised-sessions.ts';
import { mayOpen } from '#data/patients/care-team.ts';
import { dropDraft } from '#data/patients/drafts.ts';
import { clinicOf } from '#data/patients/people.ts';
import { Problem } from '../../errors.ts';
import { take, told } from '../../take-entries.ts';
import { clinicianProcedure, recordProcedure, router } from '../../trpc.ts';
import { groupHourWith } from './group-hours.ts';
import { groupPeople, groupPerson } from './group-person.ts';
import { endOfTaking, takenAlong } from './take-along.ts';

const hourId = z.string().min(1).max(64);

const entryIn = z.looseObject({
  entryId: z.string().min(1).max(64),
  day: z.string().max(10),
  amends: z.string().min(1).max(64).optional(),
});

const meanwhile =
  'Somebody corrected this session meanwhile. Reload the page; what you entered is not saved.';

/** The first session of a person in the hour has an id of its own; another one stands in the place of what counts now. */
const requireOwn = async (
  access: Access,
  hour: GroupHourOnRecord,
  patientId: string,
  { entryId, day, amends }: z.infer<typeof entryIn>,
): Promise<void> => {
  if (![hour.entry, ...hour.earlier].some((one) => beginOf(one).day === day))
    throw new Problem('refused', 'This session is of another day than the hour. Reload the page.');
  if (amends === undefined) {
    if (entryId === entryIdOfHour(hour.id, patientId, day)) return;
    throw new Problem('refused', 'This session is of another hour or person. Reload the page.');
  }
  const counts = (await sessionOfHour(access, patientId, hour.id, day))?.entry.entryId;
  // Sent again, it counts already.
  if (counts !== amends && counts !== entryId) throw new Problem('conflict', meanwhile);
};

export const groupSessionsRouter = router({
  /** Each opening of a record of the group is an opening of that record. */
  people: clinicianProcedure.input(z.object({ hourId })).query(async ({ ctx: { access }, input, path }) => {
    const hour = await groupHourWith(access, input.hourId);
    const people = await groupPeople(access, hour, (id) => mayOpen(access, id), path);
    for (const { patientId, name } of people)
      if (name !== null) noteRead(access, { subject: path, patientId });
    return people;
  }),

  /** The plain roster of a tablet that goes where there is no signal, each record on it opened: it is sealed there. */
  takeAlong: clinicianProcedure
    .input(z.object({ hourId }))
    .query(async ({ ctx: { access }, input, path }) => {
      const hour = await groupHourWith(access, input.hourId);
      const { zone } = (await clinicOf(access.store, access.clinicId))!;
      const goneAt = endOfTaking(access, hour, zone);
      const people = await groupPeople(access, hour, (id) => mayOpen(access, id), path);
      const taken = await takenAlong(access, people);
      for (const { patientId } of taken.people) noteRead(access, { subject: path, patientId });
      const { name, place } = hour.entry;
      const taker = { takenBy: access.actorId, takerName: access.actorName };
      return { ...taken, hourId: hour.id, name, place, zone, goneAt, ...taker };
    }),

  person: recordProcedure.input(z.object({ hourId })).query(async ({ ctx: { access, patient }, input }) => {
    const hour = await groupHourWith(access, input.hourId);
    return groupPerson(access, hour, patient);
  }),

  /**
   * The way of a phone's entry, marked as supervised by who sends it. Who left the group since, or an hour cancelled
   * since, does not keep out what was done.
   */
  send: recordProcedure
    .input(z.object({ hourId, entry: entryIn }))
    .mutation(async ({ ctx: { access, patient }, input: { entry, ...input } }) => {
      const hour = await groupHourWith(access, input.hourId);
      if (![...hour.members, ...hour.left].includes(patient.id))
        throw new Problem('refused', 'This person does not belong to the group.');
      await requireOwn(access, hour, patient.id, entry);
      const stored = await take(access, patient.id, 'session', { ...entry, enteredAs: 'clinic-supervised' });
      if (stored.kind === 'stored' || stored.kind === 'known')
        await dropDraft(access, patient.id, 'group-hour');
      return told(stored);
    }),
});
