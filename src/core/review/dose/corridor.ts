/** Between which doses the answers of a joint turned, from counts of what was logged. It forecasts nothing. */
import type { Dose } from '#core/prescribing/dose.ts';

export interface DoseAnswers {
  /** Of the first signed dose. */
  readonly share: number;
  /** The dose in full; null where only a part of one was done, or with another load. */
  readonly dose: Dose | null;
  readonly atUsual: number;
  readonly overUsual: number;
}

/** Between the highest dose that was mostly answered at usual and the lowest that was not. */
export interface DoseCorridor {
  readonly highestAtUsual: DoseAnswers | null;
  readonly lowestOverUsual: DoseAnswers | null;
  /** null = there is a corridor between the two. */
  readonly noneBecause: 'nothing-counted' | 'none-at-usual' | 'none-over-usual' | 'overlap' | null;
}

/** Sessions at usual from which a dose counts as answered so: one can be luck. A choice, no source. */
const leastAtUsual = 2;

/** More often at usual than over it, and twice at least. */
const isMostlyAtUsual = ({ atUsual, overUsual }: DoseAnswers): boolean =>
  atUsual >= leastAtUsual && atUsual > overUsual;

/** As often over usual as at it, or more; once is enough where it was done once. */
const isNotMostlyAtUsual = ({ atUsual, overUsual }: DoseAnswers): boolean =>
  overUsual > 0 && overUsual >= atUsual;

export const corridorOf = (doses: readonly DoseAnswers[]): DoseCorridor => {
  const highestAtUsual = doses.findLast(isMostlyAtUsual) ?? null;
  const lowestOverUsual = doses.find(isNotMostlyAtUsual) ?? null;
  const noneBecause =
    doses.length === 0
      ? 'nothing-counted'
      : highestAtUsual === null
        ? 'none-at-usual'
        : lowestOverUsual === null
          ? 'none-over-usual'
          : lowestOverUsual.share < highestAtUsual.share
            ? 'overlap'
            : null;
  return { highestAtUsual, lowestOverUsual, noneBecause };
};
