'use client';
import { useCallback, useMemo } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
/**
 * The patient's day as one document: today, the session, the morning check, two hours after. Steps
 * move in the browser's history; nothing here waits for the network.
 */
import { askedInSession } from '#core/record/followed-joints.ts';
import { Changed } from './changed/changed.tsx';
import { Correct } from './correcting/correct.tsx';
import { arrivalOf, dayState } from './day-state.ts';
import { HomeQuestions } from './home-questions/home-questions.tsx';
import { NotSaved } from './outbox/saved-here.tsx';
import { home } from './phone/use-place.ts';
import { hasCuffIn } from './questions/flag-list.ts';
import type { SessionDraft } from './session/draft.ts';
import { Home, type ScreenProps } from './today/home.tsx';
import type { AskedPages } from './use-asked-pages.ts';
import { type DayHandle, useDay } from './use-day.ts';
import { useWorker } from './worker/use-worker.ts';

export interface PatientAppProps {
  readonly view: TodayView;
  /** Whose phone store this is: another person on the same phone sees none of it. */
  readonly ownerId: string;
  /** Public key of the clinic, to which finished entries are encrypted. */
  readonly clinicKey: string;
}

interface Running extends ScreenProps {
  readonly pages: AskedPages;
  readonly draft: SessionDraft;
}

const RunningSession = ({ at, pages, draft }: Running) => {
  const shift = at.view.clockOffset + (draft.clockLacksMs ?? 0);
  // The clock it began with: one measured anew in its middle would jump.
  const clock = useCallback(() => Date.now() + shift, [shift]);
  return (
    <pages.SessionScreen
      draft={draft}
      clinic={at.view.clinic}
      hasCuff={hasCuffIn([...at.view.exercises, ...draft.items])}
      asksPregnancy={at.view.asksPregnancy}
      clock={clock}
      send={at.session.send}
      arrival={arrivalOf(at.outbox.state, draft.entryId)}
      onHome={() => at.go(home)}
    />
  );
};

const Session = ({ at }: ScreenProps) =>
  at.asked && at.session.draft ? (
    <RunningSession at={at} pages={at.asked} draft={at.session.draft} />
  ) : (
    <Home at={at} />
  );

/** The check that was just sent, answered once more in its place. */
const amendMorning = (at: DayHandle) => {
  const { draft, begin } = at.morning;
  if (!draft) return;
  const again = begin(draft.day, draft.asksUrine ?? false, at.enteredAs, draft.entryId);
  at.go({ screen: 'morning', step: again.step });
};

const Morning = ({ at }: ScreenProps) =>
  at.asked && at.morning.draft ? (
    <at.asked.MorningScreen
      draft={at.morning.draft}
      clinic={at.view.clinic}
      hasCuff={hasCuffIn(at.view.exercises)}
      painLookups={at.view.painLookups}
      clock={at.clock}
      send={at.morning.send}
      arrival={arrivalOf(at.outbox.state, at.morning.draft.entryId)}
      onAmend={() => amendMorning(at)}
      onHome={() => at.go(home)}
    />
  ) : (
    <Home at={at} />
  );

const TwoHours = ({ at }: ScreenProps) =>
  at.asked ? (
    <at.asked.TwoHoursScreen
      joints={askedInSession(at.view.followedJoints, at.view.exercises)}
      sessionEntryId={at.place.step}
      answered={dayState(at.view, at.outbox.state.entries, at.clock()).twoHoursAnswered}
      day={at.outbox.state.entries.find((saved) => saved.entryId === at.place.step)?.day ?? at.view.day}
      zone={Intl.DateTimeFormat().resolvedOptions().timeZone}
      enteredAs={at.enteredAs}
      clock={at.clock}
      onAnswer={(entry) => void at.outbox.save('two-hours', entry)}
      onHome={() => at.go(home)}
    />
  ) : (
    <Home at={at} />
  );

const screens = {
  today: Home,
  session: Session,
  morning: Morning,
  'two-hours': TwoHours,
  correct: Correct,
  changed: Changed,
  'home-questions': HomeQuestions,
} as const;

/** Today's page says it among what is saved; the others have it on top. */
const isUnkept = ({ place, session, morning, outbox }: DayHandle): boolean =>
  place.screen !== 'today' && !(session.isSaved && morning.isSaved && outbox.isLasting);

export const PatientApp = ({ view, ownerId, clinicKey }: PatientAppProps) => {
  const owner = useMemo(() => ({ id: ownerId, clinicKey }), [ownerId, clinicKey]);
  const at = useDay(view, owner);
  useWorker();
  const Screen = screens[at.place.screen];
  return (
    <>
      {isUnkept(at) ? <NotSaved /> : null}
      {at.asked ? <at.asked.Aloud page={at.page} /> : null}
      <Screen at={at} />
    </>
  );
};
