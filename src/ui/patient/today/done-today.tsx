/** What is done today, in words with a mark each, and the ways to put it right while the clinic takes it. */
import type { ReactNode } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import type { DayState } from '../day-state.ts';
import type { DayView } from '../view-on-day.ts';
import { t } from '../words.ts';

const marks = {
  /** Work: the sets are steps of one stair. */
  work: <path d="M2 21v-6h7V9h7V3h6v18z" />,
  /** The joint's answer: a weight that hangs on its thread. */
  answer: <path d="M3 2h18v2.5h-7.8v6.2a5.6 5.6 0 1 1-2.4 0V4.5H3z" />,
} as const;

const Row = (props: { readonly mark: keyof typeof marks; readonly children: ReactNode }) => (
  <li>
    <svg className="mark" viewBox="0 0 24 24" aria-hidden="true">
      {marks[props.mark]}
    </svg>
    <div>{props.children}</div>
  </li>
);

export interface DoneTodayProps {
  readonly view: DayView;
  readonly state: DayState;
  readonly isReady: boolean;
  readonly runningSince: number | null;
  /** Stands while a session lies open that is not gone on with. */
  readonly ended?: ReactNode;
  /** Opens what was sent today; left out where there is nothing to put right. */
  readonly onCorrect?: () => void;
  /** Answers this morning's questions again, in place of the entry named. */
  readonly onChangeMorning: (entryId: string) => void;
}

const hasOpenQuestion = ({ view, state }: DoneTodayProps): boolean =>
  view.questionsWait || state.isMorningDue || state.twoHoursOf !== null || state.lateMorning !== null;

/** A sign that was told, a stop or a session that lies open speaks first, and nothing says beside it that work is done. */
const isSessionShown = ({ view, state, runningSince, ended }: DoneTodayProps): boolean =>
  state.session !== 'open' && !state.hasReportedFlag && !view.isStopped && runningSince === null && !ended;

/** Beside a question that is open nothing says that all is done. */
const Session = (props: DoneTodayProps) => (
  <Row mark="work">
    <p className="done-today-name">{t('today.sent-title')}</p>
    <p>
      {t(props.state.session === 'sent' ? 'today.sent' : 'today.sent-here')}{' '}
      {hasOpenQuestion(props) ? null : t('today.no-more')}
    </p>
    {props.onCorrect ? (
      <Button tone="quiet" onClick={props.onCorrect}>
        {t('today.correct')}
      </Button>
    ) : null}
  </Row>
);

const Morning = ({ state: { morningToChange }, isReady, onChangeMorning }: DoneTodayProps) => (
  <Row mark="answer">
    <p>
      {t('today.morning-done')}{' '}
      {morningToChange === null ? null : (
        <Button tone="quiet" disabled={!isReady} onClick={() => onChangeMorning(morningToChange)}>
          {t('today.morning-change')}
        </Button>
      )}
    </p>
  </Row>
);

export const DoneToday = (props: DoneTodayProps) => {
  const isShown = isSessionShown(props);
  const { isMorningAnswered } = props.state;
  if (!isShown && !isMorningAnswered) return null;
  return (
    <ul className="done-today">
      {isShown ? <Session {...props} /> : null}
      {isMorningAnswered ? <Morning {...props} /> : null}
    </ul>
  );
};
