/**
 * One episode of care: why the person comes, from the first contact to the end. One person may have
 * several, one after the other or side by side.
 *
 * Each change is dated and has a reason. What may follow what is a table; everything else is refused
 * with a sentence. Nothing here deletes or hides: a closed episode stays readable, and what arrives
 * later belongs to the record as before. The states and their order are a choice of this project.
 */

import type { Joint } from '../exercises/joints.ts';
import { answer, type Outcome, type Refusal, refuse } from '../outcome.ts';
import { type Day, daysBetween, isDay } from '../time/day.ts';

export const episodeStates = ['open', 'active', 'on-break', 'discharged', 'transferred', 'died'] as const;
export type EpisodeState = (typeof episodeStates)[number];

export const breakKinds = ['holiday', 'illness', 'hospital'] as const;
export type BreakKind = (typeof breakKinds)[number];

export const closedStates: readonly EpisodeState[] = ['discharged', 'transferred', 'died'];

export interface EpisodeChange {
  readonly to: EpisodeState;
  /** First day on which it holds. */
  readonly on: Day;
  readonly reason: string;
  /** Of a break; null for every other state. */
  readonly breakKind: BreakKind | null;
  /** Day the person is expected back; only of a break, and null when not known. */
  readonly expectedBack: Day | null;
  readonly recordedAt: number;
  readonly by: string;
}

export interface Contact {
  readonly role: string;
  readonly name: string;
  readonly phone: string | null;
}

export interface Episode {
  readonly id: string;
  readonly diagnoses: readonly string[];
  readonly joints: readonly Joint[];
  /** Those asked about every morning. */
  readonly followedJoints: readonly Joint[];
  /** In the patient's own words. */
  readonly goals: readonly string[];
  readonly referrer: string | null;
  readonly contacts: readonly Contact[];
  /** Oldest first; the first one opens it. */
  readonly changes: readonly EpisodeChange[];
}

/** Closed by its last change. */
export const isOver = ({ changes }: Pick<Episode, 'changes'>): boolean =>
  closedStates.some((state) => state === changes.at(-1)?.to);

const may = null;
const isClosed = (state: string) => `This episode of care is closed (${state}); open a new one.`;

/** From a state to a state: null where it may follow, otherwise why not. */
export const transitions: Readonly<Record<EpisodeState, Readonly<Record<EpisodeState, string | null>>>> = {
  open: {
    open: 'It is open already.',
    active: may,
    'on-break': may,
    discharged: may,
    transferred: may,
    died: may,
  },
  active: {
    open: 'Care has already begun; it cannot go back to open.',
    active: 'It is active already.',
    'on-break': may,
    discharged: may,
    transferred: may,
    died: may,
  },
  'on-break': {
    open: 'A break ends when the patient returns to care.',
    active: may,
    'on-break': 'The patient is already on a break; record the return first, then the next break.',
    discharged: may,
    transferred: may,
    died: may,
  },
  discharged: {
    open: isClosed('discharged'),
    active: isClosed('discharged'),
    'on-break': isClosed('discharged'),
    discharged: isClosed('discharged'),
    transferred: isClosed('discharged'),
    died: isClosed('discharged'),
  },
  transferred: {
    open: isClosed('transferred'),
    active: isClosed('transferred'),
    'on-break': isClosed('transferred'),
    discharged: isClosed('transferred'),
    transferred: isClosed('transferred'),
    died: isClosed('transferred'),
  },
  died: {
    open: isClosed('died'),
    active: isClosed('died'),
    'on-break': isClosed('died'),
    discharged: isClosed('died'),
    transferred: isClosed('died'),
    died: isClosed('died'),
  },
};

export type WantedChange = Omit<EpisodeChange, 'recordedAt' | 'by'>;

const dayRefusals = (last: EpisodeChange, change: WantedChange, today: Day): readonly Refusal[] => {
  const field = 'input.on';
  if (!isDay(change.on)) {
    return [{ field, code: 'wrong-type', reason: 'Give a day that exists.' }];
  }
  if (daysBetween(change.on, today) < 0) {
    return [{ field, code: 'too-high', reason: 'This day is after today; record it on the day it begins.' }];
  }
  if (daysBetween(last.on, change.on) < 0) {
    return [
      { field, code: 'too-low', reason: `The last change was on ${last.on}; give that day or a later one.` },
    ];
  }
  return [];
};

const breakRefusals = (change: WantedChange): readonly Refusal[] => {
  const isBreak = change.to === 'on-break';
  const refusals: Refusal[] = [];
  if (isBreak !== (change.breakKind !== null)) {
    const reason = isBreak
      ? 'Say what kind of break it is: holiday, illness or hospital.'
      : 'Choose a kind only for a break.';
    refusals.push({ field: 'input.breakKind', code: 'inconsistent', reason });
  }
  if (change.expectedBack !== null) {
    const isLater = isDay(change.expectedBack) && isDay(change.on) && change.expectedBack > change.on;
    if (!isBreak || !isLater) {
      const reason = isBreak
        ? 'The day of return must be after the first day of the break; check both.'
        : 'Enter a day of return only for a break.';
      refusals.push({ field: 'input.expectedBack', code: 'inconsistent', reason });
    }
  }
  return refusals;
};

const lastChange = (episode: Pick<Episode, 'changes'>): EpisodeChange => {
  const last = episode.changes.at(-1);
  if (!last) throw new RangeError('An episode of care starts with a change that opens it.');
  return last;
};

/** The change as it may be recorded, or every reason why not. */
export const checkChange = (
  episode: Pick<Episode, 'changes'>,
  change: WantedChange,
  today: Day,
): Outcome<WantedChange> => {
  const last = lastChange(episode);
  const barred = transitions[last.to][change.to];
  if (barred !== null) return refuse('to', 'inconsistent', barred);
  const refused = [
    ...dayRefusals(last, change, today),
    ...breakRefusals(change),
    ...(change.reason.trim() === ''
      ? [{ field: 'input.reason', code: 'missing' as const, reason: 'Give the reason in a few words.' }]
      : []),
  ];
  return refused.length > 0 ? { ok: false, refused } : answer(change);
};
