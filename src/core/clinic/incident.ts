/**
 * What happened or nearly happened, as somebody of the clinic writes it down. An entry stays as it was written; a
 * later one may stand in its place. Nothing of it is read by a rule.
 */
import type { Field, InputOf } from '../calculations/describe.ts';
import type { Refusal } from '../outcome.ts';
import { dateTimeParts } from '../time/date-time.ts';
import { type Day, daysBetween } from '../time/day.ts';

/** Common practice, no source. */
export const incidentKinds = ['harm', 'no-harm', 'near-miss', 'software-fault'] as const;

const text = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, about }) as const;

const longestStory = 4000;

export const incidentFields = [
  { name: 'when', kind: 'date-time', mayLackTime: true, about: 'When it happened' },
  { name: 'kind', kind: 'enum', values: incidentKinds, about: 'Kind' },
  text('happened', longestStory, 'What happened, or nearly happened'),
  { ...text('doneAtOnce', 2000, 'What was done at once'), nullable: true },
  { ...text('wouldPrevent', 2000, 'What would prevent it'), nullable: true },
  { ...text('told', 500, 'Who was told'), nullable: true },
] as const satisfies readonly Field[];

export type Incident = InputOf<typeof incidentFields>;

export const incidentReasonFields = [text('reason', 500, 'Reason')] as const satisfies readonly Field[];

/** A day and a time of day by the clinic's clock. */
export interface ClinicMoment {
  readonly day: Day;
  /** HH:MM */
  readonly time: string;
}

/** It has happened by the time it is written down. */
export const incidentRefusals = ({ when }: Incident, now: ClinicMoment): readonly Refusal[] => {
  const parts = dateTimeParts(when);
  if (!parts) return [];
  const ahead = daysBetween(now.day, parts.day);
  const isLater = ahead > 0 || (ahead === 0 && parts.time !== null && parts.time > now.time);
  return isLater
    ? [
        {
          field: 'input.when',
          code: 'too-high',
          reason: 'The day of an incident is today or earlier, and the time is not still to come.',
        },
      ]
    : [];
};

export const incidentStates = ['closed', 'reopened'] as const;
export type IncidentState = (typeof incidentStates)[number];

export interface IncidentEntry extends Incident {
  /** Shared by all entries that stand in each other's place. */
  readonly incidentId: string;
  /** 1, and one more with each entry that takes the place of the one before. */
  readonly version: number;
  readonly patientId: string | null;
  readonly writtenAt: number;
  readonly writtenBy: string;
}

export interface IncidentChange {
  readonly incidentId: string;
  readonly state: IncidentState;
  readonly reason: string;
  readonly at: number;
  readonly by: string;
}

export interface IncidentOnRecord {
  readonly id: string;
  /** The entry that counts. */
  readonly entry: IncidentEntry;
  /** Those it stands in the place of, oldest first. */
  readonly earlier: readonly IncidentEntry[];
  /** Oldest first. */
  readonly changes: readonly IncidentChange[];
  readonly isOpen: boolean;
}

/** Latest first: of a day without a time, after those of a known time. */
const latestFirst = ({ entry: one }: IncidentOnRecord, { entry: other }: IncidentOnRecord): number => {
  if (one.when !== other.when) return one.when < other.when ? 1 : -1;
  return other.writtenAt - one.writtenAt;
};

const byIncident = <R extends { readonly incidentId: string }>(
  rows: readonly R[],
): ReadonlyMap<string, readonly R[]> => {
  const found = new Map<string, R[]>();
  for (const row of rows) found.set(row.incidentId, [...(found.get(row.incidentId) ?? []), row]);
  return found;
};

/** Rows as they were written, each list oldest first. */
export const incidentsFrom = (
  entries: readonly IncidentEntry[],
  changes: readonly IncidentChange[],
): readonly IncidentOnRecord[] => {
  const changesOf = byIncident(changes);
  return [...byIncident(entries)]
    .map(([id, written]): IncidentOnRecord => {
      const versions = written.toSorted((one, other) => one.version - other.version);
      const own = changesOf.get(id) ?? [];
      return {
        id,
        entry: versions.at(-1)!,
        earlier: versions.slice(0, -1),
        changes: own,
        isOpen: own.at(-1)?.state !== 'closed',
      };
    })
    .toSorted(latestFirst);
};
