/**
 * What waits on this phone to reach the clinic. Pure: events in, the next state and effects out.
 * An entry leaves the waiting line only by the server's answer; sending it twice is harmless, since
 * its id was made here and the server keeps one record of it.
 */
import type { MorningEntry, SessionEntry, TwoHoursEntry } from '#core/model/entries.ts';
import type { Encrypted } from '../phone/seal-entry.ts';

export type Entry = SessionEntry | MorningEntry | TwoHoursEntry;
export type EntryKind = 'session' | 'morning' | 'two-hours';

export interface Kept {
  readonly entryId: string;
  readonly ownerId: string;
  readonly kind: EntryKind;
  /**
   * Sealed to the clinic: this phone cannot open it again. Dropped once the clinic has it: the phone
   * keeps no more than it needs.
   */
  readonly encrypted: Encrypted | null;
  /** Only where the browser can seal nothing. */
  readonly entry: Entry | null;
  /** Civil day it belongs to. */
  readonly day: string;
  readonly savedAt: number;
  /** Carries a warning sign: goes first. */
  readonly isUrgent: boolean;
  readonly status: 'waiting' | 'stored' | 'aside';
  /** Times it came before the session it speaks of; it then stands behind the others. */
  readonly early: number;
  readonly clockDoubtful: boolean;
}

export interface Outbox {
  readonly entries: readonly Kept[];
  /** The one entry on its way, or null. */
  readonly sendingId: string | null;
  readonly isOnline: boolean;
  readonly isSignedOut: boolean;
  /** Nothing is sent before this instant, after a failure. */
  readonly waitsUntil: number;
  /** Failures in a row; each makes the wait longer. */
  readonly failures: number;
}

export type Answer = 'stored' | 'known' | 'conflict' | 'no-session' | 'unknown-prescription';

export type OutboxEvent =
  | { readonly type: 'restored'; readonly entries: readonly Kept[]; readonly now: number }
  | { readonly type: 'saved'; readonly kept: Kept; readonly now: number }
  | { readonly type: 'online' | 'offline' | 'woke' | 'asked'; readonly now: number }
  | {
      readonly type: 'answered';
      readonly entryId: string;
      readonly stored: Answer;
      readonly clockDoubtful: boolean;
      readonly now: number;
    }
  | {
      readonly type: 'failed';
      readonly entryId: string;
      /** No answer or a fault of the server; signed out; or refused for what it says. */
      readonly why: 'trouble' | 'signed-out' | 'refused';
      readonly now: number;
    };

export type Effect =
  | { readonly type: 'send'; readonly kept: Kept }
  | { readonly type: 'keep'; readonly kept: Kept }
  | { readonly type: 'forget'; readonly entryId: string }
  | { readonly type: 'wake'; readonly at: number };

export interface Step {
  readonly state: Outbox;
  readonly effects: readonly Effect[];
}

export const emptyOutbox: Outbox = {
  entries: [],
  sendingId: null,
  isOnline: true,
  isSignedOut: false,
  waitsUntil: 0,
  failures: 0,
};

const waits = [5_000, 15_000, 60_000, 300_000];
/** While a warning sign waits, it is tried again at least this often. */
const urgentWait = 15_000;
/** Sent entries listed on the page; older ones are forgotten. */
const mostStored = 6;

export const waiting = (state: Outbox): readonly Kept[] =>
  state.entries.filter((kept) => kept.status === 'waiting');

/** Warning signs first, then in the order in which they were saved. */
const nextToSend = (state: Outbox): Kept | undefined =>
  [...waiting(state)].sort(
    (a, b) => Number(b.isUrgent) - Number(a.isUrgent) || a.early - b.early || a.savedAt - b.savedAt,
  )[0];

const sendNext = (state: Outbox, now: number, before: readonly Effect[] = []): Step => {
  const kept = nextToSend(state);
  if (!kept || state.sendingId !== null || !state.isOnline || state.isSignedOut) {
    return { state, effects: before };
  }
  if (now < state.waitsUntil) {
    return { state, effects: [...before, { type: 'wake', at: state.waitsUntil }] };
  }
  return {
    state: { ...state, sendingId: kept.entryId },
    effects: [...before, { type: 'send', kept }],
  };
};

const replaced = (state: Outbox, kept: Kept): Outbox => ({
  ...state,
  entries: state.entries.map((one) => (one.entryId === kept.entryId ? kept : one)),
});

/** Forgets the oldest entries the clinic has; what waits or was put aside is never forgotten. */
const tidied = (step: Step): Step => {
  const stored = step.state.entries.filter((kept) => kept.status === 'stored');
  const old = [...stored].sort((a, b) => b.savedAt - a.savedAt).slice(mostStored);
  if (old.length === 0) return step;
  return {
    state: { ...step.state, entries: step.state.entries.filter((kept) => !old.includes(kept)) },
    effects: [...step.effects, ...old.map((kept): Effect => ({ type: 'forget', entryId: kept.entryId }))],
  };
};

const afterAnswer = (state: Outbox, event: Extract<OutboxEvent, { type: 'answered' }>, kept: Kept): Step => {
  // It speaks of a session that has not arrived yet: it keeps its place after the others.
  if (event.stored === 'no-session') {
    const later = { ...kept, early: kept.early + 1 };
    const waitsUntil = event.now + waits[0]!;
    return sendNext({ ...replaced(state, later), waitsUntil }, event.now, [{ type: 'keep', kept: later }]);
  }
  const isAside = event.stored === 'unknown-prescription';
  const done: Kept = {
    ...kept,
    status: isAside ? 'aside' : 'stored',
    entry: isAside ? kept.entry : null,
    encrypted: isAside ? kept.encrypted : null,
    clockDoubtful: event.clockDoubtful,
  };
  return tidied(
    sendNext({ ...replaced(state, done), waitsUntil: 0, failures: 0 }, event.now, [
      { type: 'keep', kept: done },
    ]),
  );
};

const afterFailure = (state: Outbox, event: Extract<OutboxEvent, { type: 'failed' }>, kept: Kept): Step => {
  if (event.why === 'signed-out') return { state: { ...state, isSignedOut: true }, effects: [] };
  if (event.why === 'refused') {
    const aside: Kept = { ...kept, status: 'aside' };
    return sendNext(replaced(state, aside), event.now, [{ type: 'keep', kept: aside }]);
  }
  const wait = waits[Math.min(state.failures, waits.length - 1)]!;
  const isUrgent = waiting(state).some((one) => one.isUrgent);
  const waitsUntil = event.now + (isUrgent ? Math.min(wait, urgentWait) : wait);
  return sendNext({ ...state, waitsUntil, failures: state.failures + 1 }, event.now);
};

const withSaved = (state: Outbox, kept: Kept): Outbox =>
  state.entries.some((one) => one.entryId === kept.entryId)
    ? state
    : { ...state, entries: [...state.entries, kept] };

export const outboxReducer = (state: Outbox, event: OutboxEvent): Step => {
  switch (event.type) {
    case 'restored':
      return sendNext(event.entries.reduce(withSaved, state), event.now);
    case 'saved': {
      // A warning sign is not held up by what failed before it.
      const waitsUntil = event.kept.isUrgent ? 0 : state.waitsUntil;
      const saved = withSaved({ ...state, waitsUntil }, event.kept);
      return sendNext(saved, event.now, [{ type: 'keep', kept: event.kept }]);
    }
    case 'offline':
      return { state: { ...state, isOnline: false }, effects: [] };
    case 'online':
    case 'asked':
      return sendNext({ ...state, isOnline: true, isSignedOut: false, waitsUntil: 0 }, event.now);
    case 'woke':
      return sendNext(state, event.now);
    case 'answered':
    case 'failed': {
      const kept = state.entries.find((one) => one.entryId === event.entryId);
      const free = state.sendingId === event.entryId ? { ...state, sendingId: null } : state;
      if (kept?.status !== 'waiting') return sendNext(free, event.now);
      return event.type === 'answered' ? afterAnswer(free, event, kept) : afterFailure(free, event, kept);
    }
  }
};
