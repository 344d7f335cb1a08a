/** One session: events in, the next draft out. Pure, so that a reload replays to the same page. */
import { isAskedAgain, resumed } from './asked-again.ts';
import { forward, withItem } from './change.ts';
import { cuffReducer } from './cuff-reducer.ts';
import { didWork, type FlagsWhen, type SessionDraft } from './draft.ts';
import type { SessionEvent } from './events.ts';
import { isOfEarlierDay } from './left-open/away.ts';
import { lighter, notLighter, withOffers } from './offers.ts';
import { setReducer } from './set-reducer.ts';
import { afterSteps, nextStep, stepsOf } from './steps.ts';

/** A step is entered only when it belongs to the session as answered so far; what is asked again is not passed by. */
const goTo = (draft: SessionDraft, step: string): SessionDraft =>
  stepsOf(draft).includes(step) && (!draft.backTo || isAskedAgain(step))
    ? { ...draft, step, isChanging: false, toConfirm: null }
    : draft;

const flagField = { before: 'flagsBefore', during: 'flagsDuring', now: 'flagsNow' } as const;

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

const withWholeList = ({ wholeLists = [] }: SessionDraft, when: FlagsWhen) => ({
  wholeLists: [...new Set([...wholeLists, when])],
});

/** A warning sign is asked about once more before it ends the session; nothing that was answered is dropped. */
const withFlags = (
  draft: SessionDraft,
  { when, flags }: Extract<SessionEvent, { type: 'flags' }>,
): SessionDraft => {
  if (flags.length === 0) {
    const told = { ...draft, [flagField[when]]: flags };
    return when === 'now' ? backFromList(told) : forward(told);
  }
  return { ...draft, toConfirm: { when, flags, from: draft.step }, step: 'confirm' };
};

/** Asked once more: what was meant ends the session where it stands, a slip opens nothing and is kept. */
const confirmed = (
  draft: SessionDraft,
  { isSlip, now }: Extract<SessionEvent, { type: 'confirm' }>,
): SessionDraft => {
  if (!draft.toConfirm) return draft;
  const { when, flags, from } = draft.toConfirm;
  const asked = { ...draft, toConfirm: null, ticked: { ...draft.ticked, [when]: [] } };
  if (isSlip) return { ...asked, step: from, slips: [...new Set([...(draft.slips ?? []), ...flags])] };
  return {
    ...asked,
    [flagField[when]]: flags,
    stoppedByFlag: true,
    endedAt: now,
    step: 'care',
    isChanging: false,
  };
};

/** Each thing the page stated, taken as answered; or each is asked, whatever was said of it before. */
const usual = (draft: SessionDraft, isUsual: boolean): SessionDraft => {
  const answers = isUsual
    ? { otherJointWorse: false, relief: false, news: [] }
    : draft.isUsual === true
      ? { otherJointWorse: null, relief: null, news: null }
      : {};
  return forward(draft, withOffers({ ...draft, isUsual, ...answers }));
};

const right = (draft: SessionDraft, isRight: boolean): SessionDraft => {
  const wasRight = draft.isRight === true;
  const others = (draft.wholeLists ?? []).filter((when) => when !== 'during');
  const signs = isRight
    ? { wholeLists: others, flagsDuring: [] }
    : { ...withWholeList(draft, 'during'), flagsDuring: wasRight ? null : draft.flagsDuring };
  const no = Object.fromEntries(draft.joints.map((joint) => [joint, false]));
  const rest = isRight ? { gaveWay: no, didExtra: false } : wasRight ? { gaveWay: {}, didExtra: null } : {};
  // Where the whole list is asked, it has a page of its own and is no part of the statements.
  return forward(draft, { ...draft, ...(draft.signForm === 'short' ? signs : {}), ...rest, isRight });
};

/** Answered before the exercises: what they leave of today is worked out anew each time. */
const beforeWork = /^(before:|usual$|other-joint$|relief$|news$)/;

const finishHere = (draft: SessionDraft): SessionDraft => {
  const items = draft.items.map((item) =>
    item.sets.length === 0
      ? { ...item, leftOut: item.leftOut ?? ('patient' as const) }
      : { ...item, leftAt: item.leftAt ?? item.sets.length },
  );
  const left = { ...draft, items };
  const [after = 'check'] = afterSteps(left);
  return { ...left, step: didWork(left) ? after : 'check', isChanging: false, backTo: null };
};

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
    case 'not-lighter':
      return notLighter(draft);
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
    case 'confirm':
      return confirmed(draft, event);
    case 'whole-list':
      return { ...draft, ...withWholeList(draft, event.when) };
    case 'usual':
      return usual(draft, event.isUsual);
    case 'right':
      return right(draft, event.isRight);
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
  after.endedAt !== null ||
  ['flags-now', 'confirm'].includes(after.step) ||
  stepsOf(after).includes(after.step)
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
