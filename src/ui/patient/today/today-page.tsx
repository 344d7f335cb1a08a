/** Today: what to do, what changed and why, who is watching, and one clear start. */
import type { ReactNode } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import { Button } from '#ui/design-system/button.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { dayText, timeText } from '#ui/language/text-of-time.ts';
import type { DayState } from '../day-state.ts';
import { PainLimits } from '../questions/pain-limit.tsx';
import { doableToday } from '../session/doable.ts';
import type { Score } from '../session/draft.ts';
import type { DayView } from '../view-on-day.ts';
import { t } from '../words.ts';
import { ContactFirst, RingNotice } from './contact-first.tsx';
import { CautionList, ExerciseList } from './exercise-list.tsx';
import { MorningDone } from './morning-done.tsx';
import { MorningQuestion } from './morning-question.tsx';
import { LateMorning, TwoHours } from './open-questions.tsx';
import { Told } from './told.tsx';

export interface TodayPageProps {
  readonly view: DayView;
  /** Instant the running session began; null when none runs. */
  readonly runningSince: number | null;
  /** What stands in place of the start while a session of another day lies open. */
  readonly earlier?: ReactNode;
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

const hasOpenQuestion = ({ view, state }: TodayPageProps): boolean =>
  view.questionsWait || state.isMorningDue || state.twoHoursOf !== null || state.lateMorning !== null;

/** Beside a question that is open nothing says that all is done. */
const SessionSent = (props: TodayPageProps) => (
  <Notice title={t('today.sent-title')}>
    <p>
      {t(props.state.session === 'sent' ? 'today.sent' : 'today.sent-here')}{' '}
      {hasOpenQuestion(props) ? null : t('today.no-more')}
    </p>
    {props.onCorrect ? (
      <Button tone="quiet" onClick={props.onCorrect}>
        {t('today.correct')}
      </Button>
    ) : null}
  </Notice>
);

const Start = (props: TodayPageProps) => {
  const { view, isReady, onStart } = props;
  const { isMorningDue, twoHoursOf, session, hasReportedFlag } = props.state;
  // What the clinic knows speaks for itself above; nothing is begun or gone on with under it.
  if (view.isStopped && !hasReportedFlag) return null;
  if (props.runningSince !== null && !hasReportedFlag)
    return <Running {...props} since={props.runningSince} />;
  if (hasReportedFlag) {
    const { clinic } = view;
    const text = t('today.flag-told', { clinic: clinic.name, phone: clinic.phone });
    return <RingNotice clinic={clinic} text={text} />;
  }
  if (session !== 'open') return <SessionSent {...props} />;
  if (view.isTooOld) {
    const { name, phone } = view.clinic;
    const date = dayText(view.givenOn ?? view.day);
    const text = t('today.too-old', { date, clinic: name, phone });
    return <Notice tone="care" title={<RingText text={text} clinic={view.clinic} />} />;
  }
  if (doableToday(view).length === 0) return <Nothing view={view} />;
  return (
    <section className="start stack-close">
      {isMorningDue ? null : <PainLimits lookups={view.painLookups} />}
      <Button
        tone={isMorningDue || twoHoursOf !== null ? 'plain' : 'primary'}
        isLarge
        isWide
        disabled={!isReady}
        onClick={() => onStart(false)}
      >
        {t('today.start')}
      </Button>
      <Button tone="plain" isLarge isWide disabled={!isReady} onClick={() => onStart(true)}>
        {t('today.easier')}
      </Button>
    </section>
  );
};

const Nothing = ({ view }: { readonly view: TodayView }) => {
  const isResting = view.exercises.some((exercise) => exercise.planned);
  if (view.danger.length > 0) return null;
  if (isResting)
    return (
      <Notice tone="care" title={t('today.rest-title')}>
        {t('today.rest')}
      </Notice>
    );
  return (
    <Notice title={t('today.nothing-title')}>
      {t(view.exercises.length === 0 ? 'today.none-yet' : 'today.nothing')}
    </Notice>
  );
};

export const TodayPage = (props: TodayPageProps) => {
  const { view } = props;
  return (
    <div className="stack-wide">
      <PageHeading caption={dayText(view.day)}>{t('today.title', { name: view.givenName })}</PageHeading>
      {view.givenOn !== null && !view.isTooOld ? (
        <p className="soft">{t('today.given-on', { date: dayText(view.givenOn) })}</p>
      ) : null}
      <ContactFirst view={view} />
      {props.notice}
      {props.state.isMorningDue ? (
        <MorningQuestion view={view} isReady={props.isReady} onPain={props.onPain} />
      ) : null}
      <TwoHours {...props} />
      {props.earlier ?? <Start {...props} />}
      <MorningDone state={props.state} isReady={props.isReady} onChangeMorning={props.onChangeMorning} />
      <LateMorning {...props} />
      {props.children}
      <ExerciseList view={view} />
      <Told view={view} />
      <CautionList view={view} />
      {props.onChanged ? (
        <Button tone="quiet" onClick={props.onChanged}>
          {t('today.changed')}
        </Button>
      ) : null}
      <MonitoringHours clinic={view.clinic} isFolded>
        <p className="seldom">
          <a href="/messages">{t('write.title')}</a>
        </p>
      </MonitoringHours>
      {props.foot}
    </div>
  );
};
