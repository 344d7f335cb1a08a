/** Entries of a phone: checked, kept once each, then looked at by the engine in the same transaction. */
import { z } from 'zod';
import {
  morningEntryConsistent,
  morningEntryFields,
  sessionEntryConsistent,
  sessionEntryFields,
  twoHoursEntryConsistent,
  twoHoursEntryFields,
} from '#core/model/entries.ts';
import type { Access } from '#data/access.ts';
import { isZone } from '#data/civil-time.ts';
import type { Stored } from '#data/known-entries.ts';
import { takeMorning, takeSession, takeTwoHours } from '#data/take-entry.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { patientProcedure, router } from '../trpc.ts';

const inKnownZone = <E extends { readonly zone: string }>(entry: E): E => {
  if (!isZone(entry.zone)) throw new Problem('refused', 'The time zone of this entry is not one we know.');
  return entry;
};

const take = (
  access: Access,
  patientId: string,
  kind: 'session' | 'morning' | 'two-hours',
  value: unknown,
): Promise<Stored> => {
  switch (kind) {
    case 'session':
      return takeSession(
        access,
        patientId,
        inKnownZone(checked(sessionEntryFields, value, sessionEntryConsistent)),
      );
    case 'morning':
      return takeMorning(
        access,
        patientId,
        inKnownZone(checked(morningEntryFields, value, morningEntryConsistent)),
      );
    case 'two-hours':
      return takeTwoHours(
        access,
        patientId,
        inKnownZone(checked(twoHoursEntryFields, value, twoHoursEntryConsistent)),
      );
  }
};

export const entriesRouter = router({
  send: patientProcedure
    .input(z.object({ kind: z.enum(['session', 'morning', 'two-hours']), entry: z.unknown() }))
    .mutation(async ({ ctx, input }) => {
      const stored = await take(ctx.access, ctx.patient.id, input.kind, input.entry);
      return { stored: stored.kind, clockDoubtful: 'clockDoubtful' in stored && stored.clockDoubtful };
    }),
});
