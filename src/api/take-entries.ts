/** Entries checked and taken, whoever typed them: the same rules for a phone and for the clinic's own hand. */
import {
  morningEntryConsistent,
  morningEntryFields,
  sessionEntryConsistent,
  sessionEntryFields,
  twoHoursEntryConsistent,
  twoHoursEntryFields,
} from '#core/record/entries.ts';
import type { Access } from '#data/access.ts';
import { isZone } from '#data/civil-time.ts';
import type { Stored } from '#data/entries/known-entries.ts';
import { takeMorning, takeSession, takeTwoHours } from '#data/entries/take-entry.ts';
import { Problem } from './errors.ts';
import { checked } from './inputs/checked.ts';

const inKnownZone = <E extends { readonly zone: string }>(entry: E): E => {
  if (!isZone(entry.zone)) throw new Problem('refused', 'The time zone of this entry is not one we know.');
  return entry;
};

export const entryKinds = ['session', 'morning', 'two-hours'] as const;

export const take = (
  access: Access,
  patientId: string,
  kind: (typeof entryKinds)[number],
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

export const told = (stored: Stored) => ({
  stored: stored.kind,
  clockDoubtful: 'clockDoubtful' in stored && stored.clockDoubtful,
});
