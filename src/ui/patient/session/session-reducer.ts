/** One session: events in, the next draft out. Pure, so that a reload replays to the same page. */
import { isAskedAgain, isOfEarlierDay, resumed } from './away.ts';
import { forward, withItem } from './change.ts';
import { cuffReducer } from './cuff-reducer.ts';
import type { SessionDraft } from './draft.ts';
import type { FlagsWhen, SessionEvent } from './events.ts';
import { withOffers } from './offers.ts';
import { setReducer } from './set-reducer.ts';
import { didWork, nextStep, stepsOf } from './steps.ts';

/** A step is entered only when it belongs to the session as answered so far; what is asked again is not passed by. */
const goTo = (draft: SessionDraft, step: string): SessionDraft =>
  stepsOf(draft).includes(step) && (!draft.backTo || isAskedAgain(step))
    ? { ...draft, step, isChanging: false }
    : draft;

const flagField = { before: 'flagsBefore', during: 'flagsDuring', now: 'flagsNow' } as const satisfies Record<
  FlagsWhen,
  keyof SessionDraft
>;

const backFromList = (draft: SessionDraft): SessionDraft => ({
  ...draft,
  step: draft.returnTo ?? 'check',
  returnTo: null,
  lookedAt: draft.returnTo === null ? draft.lookedAt : [...draft.lookedAt, draft.returnTo],
});

/** Opens the list of warning signs with nothing ticked. */
const unwell = (draft: SessionDraft): SessionDraft =>
  draft.step === 'flags-now'
    ? draft
    : { ...draft, step: 'flags-now', returnTo: draft.step, ticked: { ...draft.ticked, now: [] } };

/** Any warning sign ends the session where it stands; nothing that was answered is dropped. */
const withFlags = (
  draft: SessionDraft,
  { when, flags, now }: Extract<SessionEvent, { type: 'flags' }>,
): SessionDraft => {
  const told = { ...draft, [flagField[when]]: flags };
  if (flags.length === 0) {
    return when === 'now' ? backFromList(told) : forward(told);
  }
  return { ...told, stoppedByFlag: true, endedAt: now, step: 'care', isChanging: false };
};

/** Answered before the exercises: what they leave of today is worked out anew each time. */
const beforeWork = /^(before:|other-joint$|relief$|news$)/;

const finishHere = (draft: SessionDraft): SessionDraft => {
  const items = draft.items.map((item) =>
    item.sets.length === 0
      ? { ...item, leftOut: item.leftOut ?? ('patient' as const) }
      : { ...item, leftAt: item.leftAt ?? item.sets.length },
  );
  const left = { ...draft, items };
  const after = stepsOf(left).find((step) => step === 'flags-during') ?? 'check';
  return { ...left, step: didWork(left) ? after : 'check', isChanging: false, backTo: null };
};

const lighter = (draft: SessionDraft): SessionDraft => ({
  ...draft,
  kind: didWork(draft) ? draft.kind : 'bad-day',
  items: draft.items.map((item) => {
    if (item.sets.length > 0 || item.restrictions.length > 0) return item;
    const eased = { dose: item.badDay, isEasierSession: true };
    return { ...item, ...eased, planned: eased };
  }),
});

const answerReducer = (draft: SessionDraft, event: SessionEvent): SessionDraft => {
  switch (event.type) {
    case 'tick':
      return { ...draft, ticked: { ...draft.ticked, [event.list]: event.values } };
    case 'score':
      return { ...draft, scores: { ...draft.scores, [event.key]: event.score } };
    case 'relief':
      return { ...draft, relief: event.relief };
    case 'news':
      return { ...draft, news: event.news };
    case 'gave-way':
      return { ...draft, gaveWay: { ...draft.gaveWay, [event.joint]: event.gaveWay } };
    case 'other-joint':
      return { ...draft, otherJointWorse: event.isWorse };
    case 'extra':
      return { ...draft, didExtra: event.didExtra };
    case 'load':
      return withItem(draft, event.item, (item) => ({ ...item, loadKg: event.loadKg }));
    case 'lighter':
      return lighter(draft);
    case 'leave-out':
      return forward(
        draft,
        withItem(draft, event.item, (item) => ({ ...item, leftOut: 'patient' })),
      );
    default:
      return draft;
  }
};

const react = (draft: SessionDraft, event: SessionEvent): SessionDraft => {
  switch (event.type) {
    case 'go':
      return goTo(draft, event.step);
    case 'change':
      return { ...goTo(draft, event.step), isChanging: true };
    case 'next':
      return forward(draft, beforeWork.test(draft.step) ? withOffers(draft) : draft);
    case 'unwell':
      return unwell(draft);
    case 'flags':
      return withFlags(draft, event);
    case 'finish-here':
      return finishHere(draft);
    case 'sent':
      return { ...draft, endedAt: event.now, step: 'done' };
    default:
      return setReducer(draft, event) ?? cuffReducer(draft, event) ?? answerReducer(draft, event);
  }
};

/** An answer that takes the present step away moves on to the next that is left. */
const settled = (before: SessionDraft, after: SessionDraft): SessionDraft =>
  after.endedAt !== null || after.step === 'flags-now' || stepsOf(after).includes(after.step)
    ? after
    : { ...after, step: nextStep({ ...before, step: after.step }, after) };

/** A session that has ended takes no more answers: what was sent and what is shown stay the same. */
export const sessionReducer = (draft: SessionDraft, event: SessionEvent): SessionDraft =>
  draft.endedAt !== null ? draft : settled(draft, react(draft, event));

export interface Timed {
  readonly event: SessionEvent;
  readonly now: number;
  /** Civil day it is at that instant. */
  readonly day: string;
}

/** The same with its instant: an answer that comes after a long pause is kept, and what is true now is asked again. */
export const timedReducer = (draft: SessionDraft, { event, now, day }: Timed): SessionDraft => {
  const after = sessionReducer(draft, event);
  if (after.endedAt !== null || isOfEarlierDay(after, day, now)) return after;
  const open = resumed(after, now);
  return open === draft ? draft : { ...open, answeredAt: now };
};
