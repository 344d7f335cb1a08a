'use client';
/**
 * The patient's day as one document: today, the session, the morning check, two hours after. Steps
 * move in the browser's history; nothing here waits for the network.
 */
import { useCallback, useMemo, useState } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import { arrivalOf, type DayState, dayState } from './day-state.ts';
import { NotSaved, SavedHere } from './outbox/saved-here.tsx';
import { useNow } from './phone/use-now.ts';
import { home } from './phone/use-place.ts';
import { hasCuffIn } from './questions/flag-list.ts';
import type { Score, SessionDraft } from './session/draft.ts';
import { didWork } from './session/steps.ts';
import { Elsewhere } from './today/elsewhere.tsx';
import { More } from './today/more.tsx';
import { QuestionsMissing } from './today/questions-missing.tsx';
import { TodayPage } from './today/today-page.tsx';
import { Earlier, Unusual } from './today/unusual.tsx';
import { QuestionsWait } from './today/visit-links.tsx';
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

interface ScreenProps {
  readonly at: DayHandle;
}

const SavedEntries = ({ at }: ScreenProps) => (
  <SavedHere
    state={at.outbox.state}
    isLasting={at.outbox.isLasting}
    phone={at.view.clinic.phone}
    onSend={at.outbox.sendNow}
  />
);

/** The first question of the morning is answered on today's page; a check that was left is gone on with from it. */
const answerMorning = ({ view, morning, enteredAs, go }: DayHandle, state: DayState, pain: Score) => {
  const [joint] = morning.begin(view.day, state.asksUrine, enteredAs, state.morningToChange).joints;
  if (joint === undefined) return;
  const step = `pain:${joint}`;
  go({ screen: 'morning', step });
  morning.send({ type: 'go', step });
  morning.send({ type: 'answer', joint, answer: { pain } });
  morning.send({ type: 'next' });
};

const Home = ({ at }: ScreenProps) => {
  const { session, morning, go, view } = at;
  const state = dayState(view, at.outbox.state.entries, useNow(at.clock, view.asksTwoHours));
  const running = session.draft?.endedAt === null ? session.draft : null;
  const beginMorning = (day: string, amends: string | null = null) =>
    go({ screen: 'morning', step: morning.begin(day, state.asksUrine, at.enteredAs, amends).step });
  return (
    <TodayPage
      view={view}
      runningSince={running?.beganAt ?? null}
      state={state}
      isReady={at.isReady}
      earlier={running && at.isEarlier ? <Earlier at={at} draft={running} /> : undefined}
      onStart={(isEasierSession) =>
        go({ screen: 'session', step: session.begin(isEasierSession, at.enteredAs).step })
      }
      onResume={() => {
        session.send({ type: 'resumed' });
        if (running) go({ screen: 'session', step: running.step });
      }}
      onDiscard={running && didWork(running) ? undefined : session.drop}
      onMorning={(day) => beginMorning(day, day === view.day ? state.morningToChange : null)}
      onPain={(pain) => answerMorning(at, state, pain)}
      onChangeMorning={(entryId) => beginMorning(view.day, entryId)}
      onTwoHours={() => state.twoHoursOf && go({ screen: 'two-hours', step: state.twoHoursOf })}
      onCorrect={at.seldom && at.toCorrect ? () => go({ screen: 'correct', step: '' }) : undefined}
      notice={
        <>
          {at.isAskedMissing ? <QuestionsMissing /> : null}
          {at.tabLock.isLocked === false ? <Elsewhere onTakeOver={at.tabLock.takeOver} /> : null}
          <QuestionsWait isWaiting={view.questionsWait} />
          <Unusual at={at} state={state} onMorning={() => beginMorning(view.day, state.morningToChange)} />
        </>
      }
      foot={<More who={at.enteredAs} onChoose={at.setEnteredAs} />}
    >
      <SavedEntries at={at} />
    </TodayPage>
  );
};

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
      joints={at.view.followedJoints}
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

/** Left by a reload there is nothing open any more; today's page leads to it again. */
const Correct = ({ at }: ScreenProps) => {
  const { seldom, toCorrect, place, go, outbox, view, ownerId, clock, enteredAs, setCorrected } = at;
  const [opened] = useState(toCorrect);
  if (!seldom || !opened) return <Home at={at} />;
  return (
    <seldom.CorrectScreen
      sent={opened}
      {...{ ownerId, view, clock, enteredAs }}
      step={place.step}
      arrivalOf={(entryId) => arrivalOf(outbox.state, entryId)}
      onStep={(step) => go({ screen: 'correct', step })}
      onSave={(entry) => {
        setCorrected({ entry, titles: opened.titles });
        return outbox.save('session', entry);
      }}
      onHome={() => go(home)}
    />
  );
};

const screens = {
  today: Home,
  session: Session,
  morning: Morning,
  'two-hours': TwoHours,
  correct: Correct,
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
      <Screen at={at} />
    </>
  );
};
