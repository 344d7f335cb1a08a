/**
 * What was measured of one thing over the course of care, and what may be said of it: where it lies
 * against a norm or cut, and whether the first and the newest differ by more than the error of measuring.
 */
import type { Working } from '#core/calculations/working.ts';
import type { Day } from '#core/time/day.ts';
import type { JudgedChange } from '../change/change-beyond-error.ts';
import type { ErrorGroup } from '../change/error-group.ts';
import type { AtDistance } from '../measurements/at-distance.ts';
import type { Drawn } from './drawn.ts';

type Verdict = 'better' | 'worse' | 'within-error' | 'not-judged';

export interface Judgement {
  readonly sentence: string;
  readonly workings: readonly Working[];
}

interface Reading extends AtDistance {
  readonly day: Day;
  readonly text: string;
}

export interface OutcomeLine {
  readonly key: string;
  readonly title: string;
  /** Kind of measurement, for taking it again. */
  readonly kind: string;
  /** Oldest first. */
  readonly readings: readonly Reading[];
  readonly drawn: Drawn;
  readonly norm: Judgement;
  readonly change: Judgement & {
    readonly verdict: Verdict;
    /** Whose error it was held against; left out = one that is of no group, or none. */
    readonly errorGroup?: ErrorGroup;
    /** The same of each part, where it has parts. */
    readonly parts?: readonly string[];
  };
}

export const nothingToCompare: OutcomeLine['change'] = {
  sentence: 'Measured once; a second time is needed to speak of a change.',
  workings: [],
  verdict: 'not-judged',
};

export const withoutNorm = (sentence: string): Judgement => ({ sentence, workings: [] });

/** At most one decimal, with a minus sign that is one. */
export const amount = (value: number): string => String(Math.round(value * 10) / 10).replace('-', '−');

export const signed = (value: number): string => (value > 0 ? `+${amount(value)}` : amount(value));

const words = { better: 'a change for the better', worse: 'a change for the worse' } as const;

/** Called a change only beyond the error; equality is still error. */
export const changeWords = (judged: JudgedChange, unit: string): string => {
  const error = `error of measuring ${Math.round(judged.minimalDetectableChange * 100) / 100}${unit}`;
  return judged.direction === 'within-error'
    ? `${signed(judged.change)}${unit}, within the ${error}: not called a change.`
    : `${signed(judged.change)}${unit}, beyond the ${error}: ${words[judged.direction]}.`;
};

/** A difference for which no error of measuring is on file is shown and not called anything. */
export const unjudged = (difference: number, unit: string, why: string): OutcomeLine['change'] => ({
  sentence: `${signed(difference)}${unit}. ${why} A difference is shown and not called a change.`,
  workings: [],
  verdict: 'not-judged',
});
