/** That this morning was answered, and the way to answer it again while the clinic takes it. */
import { Button } from '#ui/design-system/button.tsx';
import type { DayState } from '../day-state.ts';
import { t } from '../words.ts';

interface MorningDoneProps {
  readonly state: DayState;
  readonly isReady: boolean;
  /** Answers this morning's questions again, in place of the entry named. */
  readonly onChangeMorning: (entryId: string) => void;
}

export const MorningDone = ({ state, isReady, onChangeMorning }: MorningDoneProps) => {
  const { isMorningAnswered, morningToChange } = state;
  if (!isMorningAnswered) return null;
  return (
    <p className="soft">
      {t('today.morning-done')}{' '}
      {morningToChange === null ? null : (
        <Button tone="quiet" disabled={!isReady} onClick={() => onChangeMorning(morningToChange)}>
          {t('today.morning-change')}
        </Button>
      )}
    </p>
  );
};
