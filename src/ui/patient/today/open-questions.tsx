/** Questions that are open besides those of this morning: of yesterday, and two hours after a session. */
import type { ReactNode } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import type { DayState } from '../day-state.ts';
import { t } from '../words.ts';

interface Asked {
  readonly state: DayState;
  readonly isReady: boolean;
}

export const LateMorning = ({
  state,
  isReady,
  onMorning,
}: Asked & { readonly onMorning: (day: string) => void }) => {
  const { lateMorning } = state;
  if (lateMorning === null) return null;
  return (
    <section className="stack-close">
      <h2>{t('today.late-title')}</h2>
      <p>{t('today.late')}</p>
      <Button tone="plain" disabled={!isReady} onClick={() => onMorning(lateMorning)}>
        {t('today.late-start')}
      </Button>
    </section>
  );
};

/** Asked now and then: never the main thing of a day. */
export const QuestionsDueLine = ({
  state,
  onAnswer,
}: Pick<Asked, 'state'> & { readonly onAnswer?: (() => void) | undefined }) => {
  const { questionsDue } = state;
  if (questionsDue === null || !onAnswer) return null;
  return (
    <p className="soft">
      {t('today.questions-due', { count: questionsDue.questions.length })}{' '}
      <Button tone="quiet" onClick={onAnswer}>
        {t('today.questions-answer')}
      </Button>
    </p>
  );
};

interface TwoHoursProps extends Asked {
  readonly onTwoHours: () => void;
  readonly runningSince: number | null;
  readonly ended?: ReactNode;
}

/** One thing to do comes first: a session that lies open, then a question that is due, then the next session. */
export const TwoHours = ({ state, isReady, onTwoHours, runningSince, ended }: TwoHoursProps) =>
  state.twoHoursOf !== null ? (
    <section className="first stack-close">
      <h2>{t('today.two-hours-title')}</h2>
      <p>{t('today.two-hours')}</p>
      <Button
        tone={runningSince === null && !ended ? 'primary' : 'plain'}
        isLarge
        isWide
        disabled={!isReady}
        onClick={onTwoHours}
      >
        {t('today.two-hours-start')}
      </Button>
    </section>
  ) : null;
