/** Today: what to do, what changed and why, who is watching, and one clear start. */
import type { ReactNode } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { dayText, timeText } from '#ui/language/text-of-time.ts';
import { AtClinic } from '../at-clinic.tsx';
import type { DayState } from '../day-state.ts';
import { KeepInMind, LimitLines } from '../keep-in-mind.tsx';
import { PainLimits } from '../questions/pain-limit.tsx';
import { doableToday } from '../session/doable.ts';
import type { Score } from '../session/draft.ts';
import type { DayView } from '../view-on-day.ts';
import { t } from '../words.ts';
import { ContactFirst, RingNotice } from './contact-first.tsx';
import { DoneToday } from './done-today.tsx';
import { ExerciseList } from './exercise-list.tsx';
import { MorningQuestion } from './morning-question.tsx';
import { LateMorning, QuestionsDueLine, TwoHours } from './open-questions.tsx';
import { LessTold, Nothing, RestBeside } from './rest.tsx';
import { Told, ToldBefore } from './told.tsx';

export interface TodayPageProps {
  readonly view: DayView;
  /** Instant the running session began; null when none runs. */
  readonly runningSince: number | null;
  /** What stands in place of the start while a session lies open that is not gone on with. */
  readonly ended?: ReactNode;
  readonly state: DayState;
  /** The phone has been read; before that nothing can be begun. */
  readonly isReady: boolean;
  readonly onStart: (isEasierSession: boolean) => void;
  readonly onResume: () => void;
  /** Left out once work was done: what was done is never dropped by one tap. */
  readonly onDiscard?: () => void;
  /** Of a day: this one, or the day before. */
  readonly onMorning: (day: string) => void;
  /** How the first followed joint is this morning. */
  readonly onPain: (pain: Score) => void;
  /** Answers this morning's questions again, in place of the entry named. */
  readonly onChangeMorning: (entryId: string) => void;
  readonly onTwoHours: () => void;
  /** Opens what was sent today; left out where there is nothing to put right. */
  readonly onCorrect?: () => void;
  /** Answers what the clinic asks now and then; left out until its pages are there. */
  readonly onQuestionsDue?: () => void;
  /** Says that something has changed, at any hour; left out until its pages are there. */
  readonly onChanged?: () => void;
  /** What waits on this phone; stands under the start. */
  readonly children?: ReactNode;
  /** Stands before everything that can be begun. */
  readonly notice?: ReactNode;
  /** Settings and the like, at the foot. */
  readonly foot?: ReactNode;
}

const Running = ({ since, ...props }: TodayPageProps & { readonly since: number }) => (
  <section className="first stack-close">
    <p>{t('today.resume-note', { time: timeText(since) })}</p>
    <Button isLarge isWide onClick={props.onResume}>
      {t('today.resume')}
    </Button>
    {props.onDiscard ? (
      <Button tone="quiet" onClick={props.onDiscard}>
        {t('today.discard')}
      </Button>
    ) : null}
  </section>
);

const Start = (props: TodayPageProps) => {
  const { view, isReady, onStart } = props;
  const { isMorningDue, twoHoursOf, session, hasReportedFlag, leftUntilCounted } = props.state;
  // What the clinic knows speaks for itself above; nothing is begun or gone on with under it.
  if (view.isStopped && !hasReportedFlag) return null;
  if (props.runningSince !== null && !hasReportedFlag)
    return <Running {...props} since={props.runningSince} />;
  if (hasReportedFlag) {
    const { clinic } = view;
    const text = t('today.flag-told', { clinic: clinic.name, phone: clinic.phone });
    return <RingNotice clinic={clinic} text={text} />;
  }
  // What was done stands below, with what was answered.
  if (session !== 'open') return null;
  if (leftUntilCounted === 'none') {
    const { clinic } = view;
    const text = t('today.flare-told', { clinic: clinic.name, phone: clinic.phone });
    return <RingNotice clinic={clinic} text={text} isUrgent={false} />;
  }
  if (view.isTooOld) {
    const { name, phone } = view.clinic;
    const date = dayText(view.givenOn ?? view.day);
    const text = t('today.too-old', { date, clinic: name, phone });
    return <Notice tone="care" title={<RingText text={text} clinic={view.clinic} />} />;
  }
  const doable = doableToday(view);
  if (doable.length === 0) return <Nothing view={view} />;
  const isEasierOnly = doable.every((exercise) => exercise.today === 'bad-day');
  return (
    <section className="start stack-close">
      {isMorningDue ? null : <PainLimits lookups={view.painLookups} />}
      <Button
        tone={isMorningDue || twoHoursOf !== null ? 'plain' : 'primary'}
        isLarge
        isWide
        disabled={!isReady}
        onClick={() => onStart(isEasierOnly)}
      >
        {t(isEasierOnly ? 'today.start-easier' : 'today.start')}
      </Button>
      {isEasierOnly ? null : (
        <Button tone="plain" isLarge isWide disabled={!isReady} onClick={() => onStart(true)}>
          {t('today.easier')}
        </Button>
      )}
    </section>
  );
};

/** What is opened now and then: a line each, so that today fits its screen. */
const Lines = (props: TodayPageProps) => {
  const { view } = props;
  const doable = doableToday(view);
  return (
    <div className="lines">
      <ExerciseList view={view} />
      <AtClinic view={view} beside={doable} resting={t('today.rest-some')} />
      <ToldBefore view={view} />
      <KeepInMind exercises={doable} isOpen={doable.some((one) => one.isNewDose)} />
      <MonitoringHours clinic={view.clinic} isFolded>
        <p className="seldom">
          <a href="/messages">{t('write.title')}</a>
        </p>
      </MonitoringHours>
      {props.foot}
    </div>
  );
};

export const TodayPage = (props: TodayPageProps) => {
  const { view } = props;
  return (
    <div className="today">
      <PageHeading caption={dayText(view.day)}>{t('today.title', { name: view.givenName })}</PageHeading>
      {view.givenOn !== null && !view.isTooOld ? (
        <p className="soft">{t('today.given-on', { date: dayText(view.givenOn) })}</p>
      ) : null}
      <ContactFirst view={view} />
      {props.notice}
      <LessTold {...props} />
      {props.state.isMorningDue ? (
        <MorningQuestion view={view} isReady={props.isReady} onPain={props.onPain} />
      ) : null}
      <TwoHours {...props} />
      {props.ended ?? <Start {...props} />}
      <RestBeside {...props} />
      <DoneToday {...props} />
      <LateMorning {...props} />
      <QuestionsDueLine state={props.state} onAnswer={props.onQuestionsDue} />
      {props.children}
      <Told view={view} />
      <LimitLines exercises={doableToday(view)} />
      {props.onChanged ? (
        // A sign is told here: never among what is folded.
        <Button tone="plain" isWide onClick={props.onChanged}>
          {t('today.changed')}
        </Button>
      ) : null}
      <Lines {...props} />
    </div>
  );
};
