/** The dose in force and the mornings of its joint over some weeks, as marks on one axis of days. */
import { shareOf } from '#core/decision/dose/volume.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import { firstDoseOf } from '../dose/dose-done.ts';
import { overUsualOn, reviewSeries, type ThresholdSpan } from '../series.ts';
import type { InFocus } from './in-focus.ts';

interface Step {
  readonly from: Day;
  /** null = in force. */
  readonly to: Day | null;
  /** Of the first signed dose; null = not to be compared with it. */
  readonly share: number | null;
  readonly inShort: string;
}

interface MorningMark {
  readonly day: Day;
  /** null = due and not given. */
  readonly pain: number | null;
  /** Pain over the top of usual; null = not over it, or usual pain was not set. */
  readonly over: number | null;
  readonly isFlare: boolean;
}

export interface SummaryPicture {
  readonly since: Day;
  readonly today: Day;
  readonly steps: readonly Step[];
  readonly mornings: readonly MorningMark[];
  readonly thresholds: readonly ThresholdSpan[];
  /** Of the first signed dose, where a new dose waits for a signature and can be compared with it. */
  readonly waitingShare: number | null;
}

interface Wanted {
  readonly record: PatientRecord;
  readonly focus: InFocus;
  readonly steps: readonly Step[];
  /** The dose of the same exercise that waits for a signature. */
  readonly waiting: Dose | null;
  readonly since: Day;
  readonly today: Day;
}

export const summaryPicture = ({ record, focus, steps, waiting, since, today }: Wanted): SummaryPicture => {
  const { itemId } = focus.version;
  const series = reviewSeries({
    record,
    decisions: [],
    joint: focus.joint,
    itemId: null,
    measure: 'dose',
    since,
    today,
  });
  const first = firstDoseOf(record.prescriptions.filter((version) => version.itemId === itemId));
  return {
    since,
    today,
    steps: steps
      .filter(({ from, to }) => from <= today && (to === null || to > since))
      .map(({ from, to, share, inShort }) => ({ from: from < since ? since : from, to, share, inShort })),
    mornings: series.rows.flatMap(({ day, morning }): readonly MorningMark[] => {
      if (!morning) return [];
      const pain = typeof morning.pain === 'number' ? morning.pain : null;
      const over = overUsualOn(series, day, morning.pain);
      return [{ day, pain, over, isFlare: morning.flare === true }];
    }),
    thresholds: series.thresholds,
    waitingShare: waiting && first ? shareOf(waiting, first) : null,
  };
};
