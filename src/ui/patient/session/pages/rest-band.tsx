/** The rest after a set, by the clock on the wall; it goes on while the phone sleeps. */
import { timeText } from '#ui/language/text-of-time.ts';
import { t } from '#ui/patient/words.ts';
import { type ItemDraft, setOf } from '../draft.ts';
import { ClockBand } from './clock-band.tsx';

export interface RestBandProps {
  readonly item: ItemDraft;
  /** The set that was done. */
  readonly set: number;
  readonly clock: () => number;
}

/** Nothing after the last set, and before the first. */
export const RestBand = ({ item, set, clock }: RestBandProps) => {
  const { finishedAt } = setOf(item, set);
  if (set < 1 || set >= item.dose.sets || finishedAt === null) return null;
  const endsAt = finishedAt + item.dose.restSeconds * 1000;
  return (
    <ClockBand
      endsAt={endsAt}
      clock={clock}
      until={t('rest.until', { time: timeText(endsAt) })}
      over={t('rest.over')}
    />
  );
};
