/** The doses of a course as the picture draws them: a staircase over the days shown, and how high it reaches. */
import type { Day } from '../time/day.ts';
import type { DoseStep } from './dose/dose-course.ts';

/** A point of a staircase; the value holds until the next one. */
export interface LinePoint {
  readonly day: Day;
  readonly value: number;
}

export interface LoadRange {
  readonly low: number;
  readonly high: number;
  /** What lies far under all the rest, such as easier sessions: the empty part of the axis between is not drawn. */
  readonly below: { readonly low: number; readonly high: number } | null;
}

/** One dose over the days it was in force. */
export interface StepMark {
  readonly from: Day;
  /** null = in force. */
  readonly to: Day | null;
  /** Of the first signed dose; null = not to be compared with it. */
  readonly share: number | null;
  readonly inShort: string;
  /** It has a signature of its own; the others came within what was signed before. */
  readonly isSigned: boolean;
  /** It began before the days shown. */
  readonly isEarlier: boolean;
}

interface Shown {
  readonly since: Day;
  readonly today: Day;
}

/** Steps of which a part lies in the days shown. */
export const stepsWithin = <S extends Pick<StepMark, 'from' | 'to'>>(
  steps: readonly S[],
  { since, today }: Shown,
): readonly S[] => steps.filter(({ from, to }) => from <= today && (to === null || to > since));

export const stepMarks = (
  steps: readonly Pick<DoseStep, 'from' | 'to' | 'share' | 'inShort' | 'way'>[],
  shown: Shown,
): readonly StepMark[] =>
  stepsWithin(steps, shown).map(({ from, to, share, inShort, way }) => {
    const isEarlier = from < shown.since;
    return {
      from: isEarlier ? shown.since : from,
      to: to !== null && to > shown.today ? null : to,
      share,
      inShort,
      isSigned: way === 'signed',
      isEarlier,
    };
  });

/** Joined where one dose took the place of another; a dose without height, and the end of the exercise, break it. */
export const staircase = (
  steps: readonly Pick<StepMark, 'from' | 'to' | 'share'>[],
  today: Day,
): readonly (readonly LinePoint[])[] => {
  const segments: LinePoint[][] = [];
  steps.forEach(({ from, to, share }, place) => {
    if (share === null) return;
    const before = steps[place - 1];
    const open = before?.to === from && before.share !== null ? segments.at(-1) : undefined;
    const points = [
      { day: from, value: share },
      { day: to ?? today, value: share },
    ];
    if (open) open.splice(-1, 1, ...points);
    else segments.push(points);
  });
  return segments;
};

/** A course that hardly moves is not blown up: the axis is at least this part of its highest figure. A choice. */
const leastPart = 0.2;

/** An empty stretch under the lowest dose is left out from this part of the whole axis on. A choice. */
const leastEmptyPart = 0.4;

/** Where the widest empty stretch under `floor` ends; null where none is wide enough. */
const endOfEmpty = (known: readonly number[], floor: number): number | null => {
  const high = known.at(-1)!;
  const least = Math.max((high - known[0]!) * leastEmptyPart, high * leastPart);
  const upTo = known.filter((value) => value <= floor);
  const gaps = upTo.slice(1).map((value, place) => ({ value, gap: value - upTo[place]! }));
  const widest = gaps.reduce((most, one) => (one.gap > most.gap ? one : most), { value: 0, gap: 0 });
  return widest.gap > 0 && widest.gap >= least ? widest.value : null;
};

/**
 * From the lowest to the highest figure that is known; a figure alone stands in the middle. Under `floor`, the lowest
 * dose in force, an empty stretch may be left out; null = nothing is.
 */
export const loadRange = (values: readonly (number | null)[], floor: number | null): LoadRange => {
  const known = values.filter((value) => value !== null).sort((a, b) => a - b);
  if (known.length === 0) return { low: 0, high: 1, below: null };
  const from = floor === null ? null : endOfEmpty(known, floor);
  const under = from === null ? [] : known.filter((value) => value < from);
  const [low, high] = [from ?? known[0]!, known.at(-1)!];
  const missing = Math.max(0, (high > 0 ? high * leastPart : 1) - (high - low));
  return {
    low: low - missing / 2,
    high: high + missing / 2,
    below: under.length > 0 ? { low: under[0]!, high: under.at(-1)! } : null,
  };
};
