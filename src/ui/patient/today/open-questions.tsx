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

interface TwoHoursProps extends Asked {
  readonly onTwoHours: () => void;
  readonly runningSince: number | null;
  readonly earlier?: ReactNode;
}

/** One thing to do comes first: a session that lies open, then a question that is due, then the next session. */
export const TwoHours = ({ state, isReady, onTwoHours, runningSince, earlier }: TwoHoursProps) =>
  state.twoHoursOf !== null ? (
    <section className="first stack-close">
      <h2>{t('today.two-hours-title')}</h2>
      <p>{t('today.two-hours')}</p>
      <Button
        tone={runningSince === null && !earlier ? 'primary' : 'plain'}
        isLarge
        isWide
        disabled={!isReady}
        onClick={onTwoHours}
      >
        {t('today.two-hours-start')}
      </Button>
    </section>
  ) : null;
