/** The rest after a set, by the clock on the wall; it goes on while the phone sleeps. */
import { timeText } from '#ui/language/text-of-time.ts';
import { t } from '#ui/patient/words.ts';
import type { ItemDraft } from '../draft.ts';
import { restEndsAt } from '../rest-end.ts';
import { ClockBand } from './clock-band.tsx';

export interface RestBandProps {
  readonly item: ItemDraft;
  /** The set that was done. */
  readonly set: number;
  readonly clock: () => number;
}

export const RestBand = ({ item, set, clock }: RestBandProps) => {
  const endsAt = restEndsAt(item, set);
  if (endsAt === null) return null;
  return (
    <ClockBand
      endsAt={endsAt}
      clock={clock}
      until={t('rest.until', { time: timeText(endsAt) })}
      over={t('rest.over')}
    />
  );
};
