/** What a part of the bench is given and what it tells. */
import type { GroupPlan } from './group/plan.ts';
import type { Paired } from './pairs.ts';

export interface BenchSettings {
  readonly plan: GroupPlan;
  /** Sizes of the growth curve, smallest first. */
  readonly growth: readonly GroupPlan[];
  /** Instant of the process clock until which a part goes on measuring; 0 = the least that is needed. */
  readonly until: number;
}

export interface Measured {
  readonly part: string;
  readonly title: string;
  /** null = a figure without a bar. */
  readonly bar: number | null;
  readonly paired: Paired | null;
  readonly figures: Readonly<Record<string, number | string>>;
  /** Why it could not be measured here. */
  readonly skipped?: string;
  /** Something that must not happen at all happened. */
  readonly failed?: boolean;
}

export interface Part {
  readonly name: string;
  readonly about: string;
  readonly run: (settings: BenchSettings) => Promise<readonly Measured[]>;
}

/** Missed only when the whole interval lies over the bar. */
export const isMissed = ({ bar, paired, failed }: Measured): boolean =>
  failed === true || (bar !== null && paired !== null && paired.low > bar);

/** Rounded for reading; the JSON keeps the same figures. */
export const rounded = (value: number, digits = 3): number => Number(value.toPrecision(digits));
