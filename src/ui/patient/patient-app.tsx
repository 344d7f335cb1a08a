'use client';
/**
 * The patient's day as one document: today, the session, the morning check, two hours after. Steps
 * move in the browser's history; nothing here waits for the network.
 */
import type { TodayView } from '#api/patient/today-view.ts';
import { dayState, hasArrived } from './day-state.ts';
import { MorningScreen } from './morning/morning-screen.tsx';
import { SavedHere } from './outbox/saved-here.tsx';
import { useNow } from './phone/use-now.ts';
import { home } from './phone/use-place.ts';
import { SessionScreen } from './session/session-screen.tsx';
import { didWork } from './session/steps.ts';
import { TodayPage } from './today/today-page.tsx';
import { TwoHoursScreen } from './two-hours/two-hours-screen.tsx';
import { type DayHandle, useDay } from './use-day.ts';

export interface PatientAppProps {
  readonly view: TodayView;
  /** Whose phone store this is: another person on the same phone sees none of it. */
  readonly ownerId: string;
}

interface ScreenProps {
  readonly view: TodayView;
  readonly at: DayHandle;
}

const SavedEntries = ({ view, at }: ScreenProps) => (
  <SavedHere
    state={at.outbox.state}
    isLasting={at.outbox.isLasting}
    phone={view.clinic.phone}
    onSend={at.outbox.sendNow}
  />
);

const Home = ({ view, at }: ScreenProps) => {
  const { session, morning, go } = at;
  const state = dayState(view, at.outbox.state.entries, useNow(at.clock, view.asksTwoHours));
  const running = session.draft?.endedAt === null ? session.draft : null;
  return (
    <TodayPage
      view={view}
      runningSince={running?.beganAt ?? null}
      session={state.session}
      hasToldFlag={state.hasToldFlag}
      isReady={session.draft !== undefined && morning.draft !== undefined}
      isMorningDue={state.isMorningDue}
      isMorningAnswered={state.isMorningAnswered}
      isTwoHoursDue={state.twoHoursOf !== null}
      onStart={(isLighter) => go({ screen: 'session', step: session.begin(isLighter).step })}
      onResume={() => running && go({ screen: 'session', step: running.step })}
      onDiscard={running && didWork(running) ? undefined : session.drop}
      onMorning={() => go({ screen: 'morning', step: morning.begin().step })}
      onTwoHours={() => state.twoHoursOf && go({ screen: 'two-hours', step: state.twoHoursOf })}
    >
      <SavedEntries view={view} at={at} />
    </TodayPage>
  );
};

const Session = ({ view, at }: ScreenProps) =>
  at.session.draft ? (
    <SessionScreen
      draft={at.session.draft}
      clinic={view.clinic}
      clock={at.clock}
      send={at.session.send}
      hasArrived={hasArrived(at.outbox.state.entries, at.session.draft.entryId)}
      onHome={() => at.go(home)}
    />
  ) : null;

const Morning = ({ view, at }: ScreenProps) =>
  at.morning.draft ? (
    <MorningScreen
      draft={at.morning.draft}
      last={at.morning.last}
      clinic={view.clinic}
      clock={at.clock}
      send={at.morning.send}
      hasArrived={hasArrived(at.outbox.state.entries, at.morning.draft.entryId)}
      onHome={() => at.go(home)}
    />
  ) : null;

const TwoHours = ({ view, at }: ScreenProps) => (
  <TwoHoursScreen
    joints={view.followedJoints}
    sessionEntryId={at.place.step}
    day={view.day}
    zone={Intl.DateTimeFormat().resolvedOptions().timeZone}
    clock={at.clock}
    onAnswer={(entry) => at.outbox.save('two-hours', entry)}
    onHome={() => at.go(home)}
  />
);

const screens = { today: Home, session: Session, morning: Morning, 'two-hours': TwoHours } as const;

export const PatientApp = ({ view, ownerId }: PatientAppProps) => {
  const at = useDay(view, ownerId);
  const Screen = screens[at.place.screen];
  return <Screen view={view} at={at} />;
};
