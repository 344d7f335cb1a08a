'use client';
/** Everything the patient's document runs on: clock, outbox, session, morning, and the place one is at. */
import { useEffect, useMemo, useRef, useState } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import type { Carer } from '#core/record/entry-words.ts';
import { useCorrection } from './correcting/use-correction.ts';
import { hasToldSign } from './day-state.ts';
import { useMorning } from './morning/use-morning.ts';
import type { Saved } from './outbox/outbox.ts';
import { type Owner, useOutbox } from './outbox/use-outbox.ts';
import {
  home,
  type Place,
  screenBeforeReload,
  stayAt,
  useHeadingFocus,
  useNewPage,
  usePlace,
} from './phone/use-place.ts';
import { type RightClock, useRightClock } from './phone/use-right-clock.ts';
import { useTabLock } from './phone/use-tab-lock.ts';
import type { SessionDraft } from './session/draft.ts';
import { type EndedBy, endedBy } from './session/left-open/ended-by.ts';
import { isCuffOn } from './session/restriction.ts';
import { useCuffMark, useSession } from './session/use-session.ts';
import { viewUntilCounted } from './until-counted.ts';
import { useAskedPages } from './use-asked-pages.ts';
import { type DayView, type Moment, momentOf, phoneDay, viewOnDay } from './view-on-day.ts';
import { usePausedUpdates } from './worker/use-worker.ts';

/** A step forward is written into the history. */
const useSteps = (
  at: { readonly place: Place; readonly go: (place: Place) => void },
  screen: Place['screen'],
  step: string | undefined,
) => {
  const { place, go } = at;
  useEffect(() => {
    if (place.screen === screen && step !== undefined && step !== place.step) go({ screen, step });
  }, [place, go, screen, step]);
};

const isCuffRunning = (session: SessionDraft | null | undefined): session is SessionDraft =>
  session?.endedAt === null && session.items.some(isCuffOn);

/** After a reload the page goes on where it stood; a cuff that is on is never left waiting behind today. */
const useReturn = (
  go: (place: Place) => void,
  session: ReturnType<typeof useSession>['draft'],
  morning: ReturnType<typeof useMorning>['draft'],
  { hasPages, isEnded }: { readonly hasPages: boolean; readonly isEnded: boolean },
) => {
  const [before] = useState(() => (typeof window === 'undefined' ? null : screenBeforeReload()));
  const isDone = useRef(false);
  useEffect(() => {
    if (isDone.current || !hasPages || session === undefined || morning === undefined) return;
    isDone.current = true;
    if (session?.endedAt === null && !isEnded && (before === 'session' || isCuffRunning(session))) {
      go({ screen: 'session', step: session.step });
    } else if (morning?.endedAt === null && before === 'morning') {
      go({ screen: 'morning', step: morning.step });
    }
  }, [go, session, morning, before, hasPages, isEnded]);
};

/** A session that is not gone on with: today's page says what can still be done with it. */
const useWayHome = ({ go }: { readonly go: (place: Place) => void }, isWanted: boolean) => {
  useEffect(() => {
    if (isWanted) go(home);
  }, [isWanted, go]);
};

/**
 * The view as it reads on the phone's own day, which moves on at midnight also without signal. Until the
 * clock has been measured the page stands as the clinic gave it.
 */
const useViewOfDay = (given: TodayView, { clock, lacksMs, isMeasured }: RightClock): DayView => {
  const [moment, setMoment] = useState<Moment | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new measure moves the clock that is read here.
  useEffect(() => {
    const look = () => {
      const now = momentOf(given, clock());
      setMoment((before) => (JSON.stringify(before) === JSON.stringify(now) ? before : now));
    };
    if (!isMeasured) return;
    look();
    const timer = setInterval(look, 30_000);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [given, clock, lacksMs, isMeasured]);
  return useMemo(() => viewOnDay(given, moment?.day ?? given.day, moment ?? undefined), [given, moment]);
};

interface Begun {
  readonly session: ReturnType<typeof useSession>;
  readonly morning: ReturnType<typeof useMorning>;
  readonly ended: EndedBy | null;
}

/** A step reached by Back is told to the reducer; what has ended leads back to today. */
const reachedByBack = (to: Place, { session, morning, ended }: Begun): Place => {
  // With a cuff on no way back leads from its clock and its stop button.
  if (isCuffRunning(session.draft) && to.screen !== 'session')
    return stayAt({ screen: 'session', step: session.draft.step });
  if (to.screen === 'correct' || to.screen === 'changed' || to.screen === 'home-questions') return to;
  const isOpen =
    (to.screen === 'session' && session.draft?.endedAt === null && ended === null) ||
    (to.screen === 'morning' && morning.draft?.endedAt === null);
  if (!isOpen) return home;
  (to.screen === 'session' ? session : morning).send({ type: 'go', step: to.step });
  return to;
};

/** A sign told on this phone stops the plan as the clinic's own word does. */
const endedNow = (
  draft: SessionDraft | null | undefined,
  view: DayView,
  entries: readonly Saved[],
  now: number,
): EndedBy | null => {
  const isStopped = view.isStopped || hasToldSign(view, entries);
  return endedBy(draft, { ...view, isStopped }, { day: phoneDay(now), now });
};

/** `isReady`: the phone has been read and the pages with the questions are there; before that nothing can be begun. */
export const useDay = (given: TodayView, owner: Owner) => {
  const right = useRightClock(given.clockOffset);
  const { clock, lacksMs } = right;
  const tabLock = useTabLock(`loadgate-writing ${owner.id}`);
  const isLocked = tabLock.isLocked === true;
  const [enteredAs, setEnteredAs] = useState<Carer | null>(null);
  const outbox = useOutbox(owner, clock);
  const { entries } = outbox.state;
  const ofDay = useViewOfDay(given, right);
  const view = useMemo(() => viewUntilCounted(ofDay, entries), [ofDay, entries]);
  const pages = useAskedPages();
  const { asked } = pages;
  const session = useSession(view, owner, isLocked, clock, outbox.save, asked);
  const morning = useMorning(view, owner, isLocked, clock, outbox.save, asked);
  useCuffMark(owner.id, session.draft);
  const ended = endedNow(session.draft, view, entries, clock());
  const at = usePlace((to) => reachedByBack(to, { session, morning, ended }));
  useSteps(at, 'session', session.draft?.step);
  useSteps(at, 'morning', morning.draft?.step);
  useReturn(at.go, session.draft, morning.draft, {
    hasPages: asked !== null && right.isMeasured,
    isEnded: ended !== null,
  });
  useWayHome(at, ended !== null && at.place.screen === 'session');
  /** Changes with each page. */
  const page = `${at.place.screen} ${at.place.step}`;
  useNewPage(page);
  useHeadingFocus(page);
  usePausedUpdates(at.place.screen !== 'today');
  return {
    ...pages,
    page,
    ownerId: owner.id,
    ...useCorrection({ view, entries, draft: session.draft, entryOf: asked?.sessionEntryOf }),
    isReady: asked !== null && session.draft !== undefined && morning.draft !== undefined,
    view,
    clock,
    lacksMs,
    outbox,
    session,
    ended,
    morning,
    tabLock,
    enteredAs,
    setEnteredAs,
    ...at,
  };
};

export type DayHandle = ReturnType<typeof useDay>;
