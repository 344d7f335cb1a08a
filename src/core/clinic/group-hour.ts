/**
 * An hour in which a clinician works with several people at once, each by the own plan. It bounds and opens nothing:
 * what is done in it is an entry of each person, and only those are read by rules.
 */
import type { Field, InputOf } from '../calculations/describe.ts';
import { dateTimeParts } from '../time/date-time.ts';

/** More than one clinician sees at once: common practice, no source. */
export const mostInGroup = 12;

const text = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, about }) as const;

/** The page offers the clinicians; the procedure knows which there are. */
export const groupHourFields = [
  text('name', 80, 'Name of the group'),
  text('place', 120, 'Place'),
  { name: 'when', kind: 'date-time', about: 'Day and time it begins' },
  { name: 'minutes', kind: 'integer', unit: 'min', min: 15, max: 180, about: 'How long it lasts' },
  text('clinicianId', 80, 'Clinician who takes it'),
] as const satisfies readonly Field[];

export type GroupHour = InputOf<typeof groupHourFields>;

export const groupReasonFields = [text('reason', 500, 'Reason')] as const satisfies readonly Field[];

export const groupStates = ['cancelled', 'entered-in-error', 'planned-again'] as const;
export type GroupState = (typeof groupStates)[number];

export interface GroupHourEntry extends GroupHour {
  /** Shared by all entries that stand in each other's place. */
  readonly hourId: string;
  /** 1, and one more with each entry that takes the place of the one before. */
  readonly version: number;
  readonly clinicianName: string;
  readonly writtenAt: number;
  readonly writtenBy: string;
}

export interface GroupChange {
  readonly hourId: string;
  readonly state: GroupState;
  readonly reason: string;
  readonly at: number;
  readonly by: string;
}

/** Somebody joins the group or leaves it; the newest row of each person counts. */
export interface GroupMember {
  readonly hourId: string;
  readonly patientId: string;
  readonly belongs: boolean;
  readonly at: number;
  readonly by: string;
}

export interface GroupHourOnRecord {
  readonly id: string;
  /** The entry that counts. */
  readonly entry: GroupHourEntry;
  /** Those it stands in the place of, oldest first. */
  readonly earlier: readonly GroupHourEntry[];
  /** Oldest first. */
  readonly changes: readonly GroupChange[];
  /** null = it stands. */
  readonly ended: Exclude<GroupState, 'planned-again'> | null;
  /** Who belongs to it, in the order in which they joined. */
  readonly members: readonly string[];
  /** Who left it again. */
  readonly left: readonly string[];
}

const of = <R extends { readonly hourId: string }>(rows: readonly R[], id: string): readonly R[] =>
  rows.filter(({ hourId }) => hourId === id);

const rosterOf = (rows: readonly GroupMember[]): Pick<GroupHourOnRecord, 'members' | 'left'> => {
  const belongs = new Map<string, boolean>();
  for (const row of rows) {
    // Who comes back joins last.
    if (row.belongs && belongs.get(row.patientId) === false) belongs.delete(row.patientId);
    belongs.set(row.patientId, row.belongs);
  }
  const people = [...belongs];
  return {
    members: people.filter(([, is]) => is).map(([id]) => id),
    left: people.filter(([, is]) => !is).map(([id]) => id),
  };
};

const endedBy = (changes: readonly GroupChange[]): GroupHourOnRecord['ended'] => {
  const state = changes.at(-1)?.state ?? 'planned-again';
  return state === 'planned-again' ? null : state;
};

/** Rows as they were written, each list oldest first; the hours by when they begin. */
export const groupHoursFrom = (
  entries: readonly GroupHourEntry[],
  changes: readonly GroupChange[],
  members: readonly GroupMember[],
): readonly GroupHourOnRecord[] =>
  [...new Set(entries.map(({ hourId }) => hourId))]
    .map((id): GroupHourOnRecord => {
      const versions = of(entries, id).toSorted((one, other) => one.version - other.version);
      const own = of(changes, id);
      return {
        id,
        entry: versions.at(-1)!,
        earlier: versions.slice(0, -1),
        changes: own,
        ended: endedBy(own),
        ...rosterOf(of(members, id)),
      };
    })
    .toSorted((one, other) => (one.entry.when < other.entry.when ? -1 : 1));

/** Past the booked end, so that the last answers are still entered: common practice, no source. */
export const minutesAfterHour = 15;

/** When what a tablet took along of an hour is gone, from the instant it begins. */
export const sealedHourEnd = (beginsAt: number, minutes: number): number =>
  beginsAt + (minutes + minutesAfterHour) * 60_000;

/** Civil day on which it begins, and HH:MM. */
export const beginOf = ({
  when,
}: Pick<GroupHour, 'when'>): { readonly day: string; readonly time: string } => {
  const { day, time } = dateTimeParts(when)!;
  return { day, time: time ?? '00:00' };
};
