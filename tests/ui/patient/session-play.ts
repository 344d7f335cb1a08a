/** Begins a session and plays events into it, for the tests of the patient's session. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { beginSession } from '#ui/patient/session/begin.ts';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import type { SessionEvent } from '#ui/patient/session/events.ts';
import { sessionReducer } from '#ui/patient/session/session-reducer.ts';
import { cuffDose, exercise, today, weightDose } from './views.ts';

export const began = 1_000_000;

export const begin = (view = today(), isEasierSession = false): SessionDraft =>
  beginSession({
    view,
    ownerId: 'p',
    entryId: 'entry-1',
    zone: 'Europe/Dublin',
    now: began,
    isEasierSession,
  });

export const play = (draft: SessionDraft, ...events: readonly SessionEvent[]): SessionDraft =>
  events.reduce(sessionReducer, draft);

export const none = (when: 'before' | 'during' | 'now'): SessionEvent => ({
  type: 'flags',
  when,
  flags: [],
  now: began,
});

export const next: SessionEvent = { type: 'next' };

export const onlyWeight = today({ exercises: [exercise('weight', weightDose)] });
export const onlyCuff = today({ exercises: [exercise('cuff', cuffDose)] });

/** Questions before the first exercise, with nothing unusual. */
export const eligibility: readonly SessionEvent[] = [
  none('before'),
  { type: 'score', key: 'before:right-knee', score: 2 },
  next,
  { type: 'usual', isUsual: true },
];

export const oneSet = (
  item: number,
  set: number,
  repetitions: number,
  now: number,
): readonly SessionEvent[] => [
  { type: 'count', item, set, repetitions },
  { type: 'set-done', item, set, lostCount: false, now },
];

/** A sign that was ticked and is meant. */
export const meant = (
  when: 'before' | 'during' | 'now',
  flags: readonly RedFlag[],
  now: number,
): readonly SessionEvent[] => [
  { type: 'flags', when, flags, now },
  { type: 'confirm', isSlip: false, now },
];
