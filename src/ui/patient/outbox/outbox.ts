/**
 * What waits on this phone to reach the clinic. Pure: events in, the next state and effects out.
 * An entry leaves the line only by the server's answer; sent twice, it is kept once, by the id made here.
 */
import type { LeftOfJoint } from '#core/decision/left-of-today.ts';
import type { Encrypted } from '#ui/on-device/encrypt-entry.ts';
import type { Entry, EntryKind } from './entry-kinds.ts';

export interface Saved {
  readonly entryId: string;
  readonly ownerId: string;
  readonly kind: EntryKind;
  /** Encrypted to the clinic: this phone cannot open it again. Dropped once the clinic has it. */
  readonly encrypted: Encrypted | null;
  /** Only where the browser can seal nothing. */
  readonly entry: Entry | null;
  /** Civil day it belongs to. */
  readonly day: string;
  readonly savedAt: number;
  /** Entry it goes in the place of; questions asked at home that it answers. */
  readonly amends?: string;
  readonly homeQuestionsId?: string;
  /** Carries a warning sign: goes first. */
  readonly isUrgent: boolean;
  /** Of a morning: what its answers leave of today until the clinic's page counts them, where that is less. */
  readonly leaves?: readonly LeftOfJoint[];
  readonly status: 'waiting' | 'stored' | 'aside';
  /** Times it came before the session it speaks of; it then stands behind the others. */
  readonly early: number;
  readonly clockDoubtful: boolean;
}

export interface Outbox {
  readonly entries: readonly Saved[];
  readonly sendingId: string | null;
  readonly isOnline: boolean;
  readonly isSignedOut: boolean;
  /** Nothing is sent before this instant, after a failure. */
  readonly waitsUntil: number;
  /** Failures in a row, each making the wait longer; where the clinic says when, nothing has failed. */
  readonly failures: number;
}

export type Answer = 'stored' | 'known' | 'conflict' | 'no-session' | 'unknown-prescription';

export type OutboxEvent =
  | { readonly type: 'restored'; readonly entries: readonly Saved[]; readonly now: number }
  | { readonly type: 'saved'; readonly saved: Saved; readonly now: number }
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
      /** No answer, a fault, or too much to do and when to come again; signed out; or refused for what it says. */
      readonly why: 'trouble' | 'signed-out' | 'refused';
      readonly now: number;
      readonly comeAgainAt?: number;
    };

export type Effect =
  | { readonly type: 'send'; readonly saved: Saved }
  | { readonly type: 'keep'; readonly saved: Saved }
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

export const waiting = (state: Outbox): readonly Saved[] =>
  state.entries.filter((saved) => saved.status === 'waiting');

/** Warning signs first, then in the order in which they were saved. */
const nextToSend = (state: Outbox): Saved | undefined =>
  [...waiting(state)].sort(
    (a, b) => Number(b.isUrgent) - Number(a.isUrgent) || a.early - b.early || a.savedAt - b.savedAt,
  )[0];

const sendNext = (state: Outbox, now: number, before: readonly Effect[] = []): Step => {
  const saved = nextToSend(state);
  if (!saved || state.sendingId !== null || !state.isOnline || state.isSignedOut) {
    return { state, effects: before };
  }
  if (now < state.waitsUntil) {
    return { state, effects: [...before, { type: 'wake', at: state.waitsUntil }] };
  }
  return {
    state: { ...state, sendingId: saved.entryId },
    effects: [...before, { type: 'send', saved }],
  };
};

const replaced = (state: Outbox, saved: Saved): Outbox => ({
  ...state,
  entries: state.entries.map((one) => (one.entryId === saved.entryId ? saved : one)),
});

/** Forgets the oldest entries the clinic has; what waits or was put aside is never forgotten. */
const tidied = (step: Step): Step => {
  const stored = step.state.entries.filter((saved) => saved.status === 'stored');
  const old = [...stored].sort((a, b) => b.savedAt - a.savedAt).slice(mostStored);
  if (old.length === 0) return step;
  return {
    state: { ...step.state, entries: step.state.entries.filter((saved) => !old.includes(saved)) },
    effects: [...step.effects, ...old.map((saved): Effect => ({ type: 'forget', entryId: saved.entryId }))],
  };
};

const afterAnswer = (
  state: Outbox,
  event: Extract<OutboxEvent, { type: 'answered' }>,
  saved: Saved,
): Step => {
  // It speaks of a session that has not arrived yet: it keeps its place after the others.
  if (event.stored === 'no-session') {
    const later = { ...saved, early: saved.early + 1 };
    const waitsUntil = event.now + waits[0]!;
    return sendNext({ ...replaced(state, later), waitsUntil }, event.now, [{ type: 'keep', saved: later }]);
  }
  const isAside = event.stored === 'unknown-prescription';
  const done: Saved = {
    ...saved,
    status: isAside ? 'aside' : 'stored',
    entry: isAside ? saved.entry : null,
    encrypted: isAside ? saved.encrypted : null,
    clockDoubtful: event.clockDoubtful,
  };
  return tidied(
    sendNext({ ...replaced(state, done), waitsUntil: 0, failures: 0 }, event.now, [
      { type: 'keep', saved: done },
    ]),
  );
};

const afterFailure = (state: Outbox, event: Extract<OutboxEvent, { type: 'failed' }>, saved: Saved): Step => {
  if (event.why === 'signed-out') return { state: { ...state, isSignedOut: true }, effects: [] };
  if (event.why === 'refused') {
    const aside: Saved = { ...saved, status: 'aside' };
    return sendNext(replaced(state, aside), event.now, [{ type: 'keep', saved: aside }]);
  }
  const until = event.comeAgainAt ?? event.now + waits[Math.min(state.failures, waits.length - 1)]!;
  const isUrgent = waiting(state).some((one) => one.isUrgent);
  const waitsUntil = isUrgent ? Math.min(until, event.now + urgentWait) : until;
  const failures = state.failures + (event.comeAgainAt === undefined ? 1 : 0);
  return sendNext({ ...state, waitsUntil, failures }, event.now);
};

const withSaved = (state: Outbox, saved: Saved): Outbox =>
  state.entries.some((one) => one.entryId === saved.entryId)
    ? state
    : { ...state, entries: [...state.entries, saved] };

export const outboxReducer = (state: Outbox, event: OutboxEvent): Step => {
  switch (event.type) {
    case 'restored':
      return sendNext(event.entries.reduce(withSaved, state), event.now);
    case 'saved': {
      // A warning sign is not held up by what failed before it.
      const waitsUntil = event.saved.isUrgent ? 0 : state.waitsUntil;
      const saved = withSaved({ ...state, waitsUntil }, event.saved);
      return sendNext(saved, event.now, [{ type: 'keep', saved: event.saved }]);
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
      const saved = state.entries.find((one) => one.entryId === event.entryId);
      const free = state.sendingId === event.entryId ? { ...state, sendingId: null } : state;
      if (saved?.status !== 'waiting') return sendNext(free, event.now);
      return event.type === 'answered' ? afterAnswer(free, event, saved) : afterFailure(free, event, saved);
    }
  }
};
