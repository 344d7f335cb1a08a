/**
 * Where a patient stands by what is kept of the worklist, whoever reads it: few states, shared by many, so that
 * the patients of a clinic can be counted by state. Days that are not of today are left out of it, and `next`
 * says when it has to be looked at again.
 */
import { closedStates, type Episode } from '../episode/episode.ts';
import { addDays, type Day } from '../time/day.ts';
import { groupOf, isSnoozed, type WorklistGroup } from './groups.ts';
import { dangers, type WorklistItemKind } from './item.ts';

interface KeptItem {
  readonly key: string;
  readonly kind: WorklistItemKind;
  readonly showsFrom: Day;
  readonly showsAt?: number | null | undefined;
  readonly assignedTo?: string | null | undefined;
  readonly assignedName?: string | null | undefined;
  readonly snoozedUntil?: Day | null | undefined;
}

export interface Stands {
  /** Kinds of the items that show now, each with whom it is given to, by id and by name; each once. */
  readonly awake: readonly (readonly [WorklistItemKind, string | null, string | null])[];
  /** Colleagues who have a snoozed item. */
  readonly snoozedNames: readonly string[];
  /** First day on which a snoozed item comes back; null = none is snoozed. */
  readonly snoozedUntil: Day | null;
  /** First day to look at a pause, where it is still ahead. */
  readonly pausedUntil: Day | null;
  readonly isScreened: boolean;
  readonly isDischarged: boolean;
}

export interface Kept {
  readonly items: readonly KeptItem[];
  readonly isScreened: boolean;
  readonly episodes: readonly Pick<Episode, 'changes'>[];
}

interface Moment {
  readonly instant: number;
  readonly day: Day;
}

/** The next day and the next instant at which the state reads otherwise; null = none. */
export interface Next {
  readonly day: Day | null;
  readonly instant: number | null;
}

const first = <T extends string | number>(all: readonly T[]): T | null =>
  all.reduce<T | null>((least, one) => (least === null || one < least ? one : least), null);

/** As of a day every episode that has begun has ended, and one has. */
const hasEnded = (episodes: Kept['episodes'], today: Day): boolean => {
  const last = episodes.flatMap(({ changes }) => changes.findLast(({ on }) => on <= today) ?? []);
  return last.length > 0 && last.every(({ to }) => closedStates.includes(to));
};

const hasBegun = ({ showsFrom, showsAt }: KeptItem, { instant, day }: Moment): boolean =>
  showsFrom <= day && (showsAt ?? 0) <= instant;

const snoozeOf = ({ snoozedUntil }: KeptItem) => ({ snoozedUntil: snoozedUntil ?? null });

const namesOf = (items: readonly KeptItem[]): readonly string[] =>
  [...new Set(items.flatMap(({ assignedName }) => assignedName ?? []))].sort();

const givenTo = (items: readonly KeptItem[]): Stands['awake'] => {
  const all = items.map(
    ({ kind, assignedTo, assignedName }) => [kind, assignedTo ?? null, assignedName ?? null] as const,
  );
  const byText = new Map(all.map((one) => [JSON.stringify(one), one]));
  return [...byText].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
};

export const standsAt = ({ items, isScreened, episodes }: Kept, at: Moment): Stands => {
  const due = items.filter((item) => hasBegun(item, at));
  const snoozed = due.filter((item) => isSnoozed({ assignedTo: null, ...snoozeOf(item) }, at.day));
  return {
    awake: givenTo(due.filter((item) => !snoozed.includes(item))),
    snoozedNames: namesOf(snoozed),
    snoozedUntil: first(snoozed.flatMap(({ snoozedUntil }) => snoozedUntil ?? [])),
    pausedUntil: first(
      items.flatMap(({ kind, showsFrom }) => (kind === 'resume-due' && showsFrom > at.day ? showsFrom : [])),
    ),
    isScreened,
    isDischarged: hasEnded(episodes, at.day),
  };
};

/** When `standsAt` has to be asked again though nobody wrote anything. */
export const standsUntil = ({ items, episodes }: Kept, { instant, day }: Moment): Next => {
  const days = [
    ...items.map(({ showsFrom }) => showsFrom),
    ...items.flatMap(({ snoozedUntil }) => (snoozedUntil ? addDays(snoozedUntil, 1) : [])),
    ...episodes.flatMap(({ changes }) => changes.map(({ on }) => on)),
  ];
  const instants = items.flatMap(({ showsFrom, showsAt }) => (showsFrom <= day ? (showsAt ?? []) : []));
  return {
    day: first(days.filter((one) => one > day)),
    instant: first(instants.filter((one) => one > instant)),
  };
};

/** Of a record kept to a team the reader is not in only danger counts; it is never snoozed. */
export const dangerOf = (stands: Stands): Stands => ({
  ...stands,
  awake: stands.awake.filter(([kind]) => dangers.includes(kind)),
  snoozedNames: [],
  snoozedUntil: null,
});

/** The group a reader finds such a patient in; `isMine` as the group asks for it. */
export const groupStanding = (
  stands: Stands,
  isMine: boolean,
  reader: string,
  today: Day,
): WorklistGroup | null => {
  const { isScreened, isDischarged, pausedUntil, snoozedUntil } = stands;
  const snoozed = snoozedUntil === null ? [] : [{ assignedTo: null, snoozedUntil }];
  const awake = stands.awake.map(([, assignedTo]) => ({ assignedTo, snoozedUntil: null }));
  const due = [...awake, ...snoozed];
  return groupOf({ due, isPaused: pausedUntil !== null, isScreened, isDischarged, isMine }, reader, today);
};
