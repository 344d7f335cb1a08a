'use client';
/** Today's page with what can be begun from it. */
import { type DayState, dayState } from '../day-state.ts';
import { SavedHere } from '../outbox/saved-here.tsx';
import { useNow } from '../phone/use-now.ts';
import { didWork, type Score } from '../session/draft.ts';
import type { DayHandle } from '../use-day.ts';
import { Elsewhere } from './elsewhere.tsx';
import { More } from './more.tsx';
import { QuestionsMissing } from './questions-missing.tsx';
import { TodayPage } from './today-page.tsx';
import { Ended, Unusual } from './unusual.tsx';
import { QuestionsWait } from './visit-links.tsx';

export interface ScreenProps {
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

export const Home = ({ at }: ScreenProps) => {
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
      ended={running && at.ended ? <Ended at={at} draft={running} by={at.ended} /> : undefined}
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
      onQuestionsDue={at.seldom ? () => go({ screen: 'home-questions', step: '' }) : undefined}
      onChanged={at.seldom ? () => go({ screen: 'changed', step: '' }) : undefined}
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
