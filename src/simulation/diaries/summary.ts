/** Many invented patients of one type in a few figures. */
import { type DecisionWord, decisions } from '#core/decision/answers.ts';
import { seeded } from '../raises/seeded.ts';
import type { DiaryType } from './diary-types.ts';
import { simulatePatient } from './one-patient.ts';
import type { Simulated, SimulationSettings } from './run-state.ts';

export interface TypeSummary {
  readonly type: DiaryType;
  readonly patients: number;
  readonly decisions: number;
  readonly shares: Readonly<Record<DecisionWord, number>>;
  readonly flareDecisions: number;
  readonly flareShares: Readonly<Record<DecisionWord, number>>;
  /** Rules that made a decision other than progress, most frequent first, as shares of all decisions. */
  readonly rules: readonly (readonly [string, number])[];
  /** Dose after the weeks as a share of the start: lower quartile, median, upper quartile. */
  readonly dose: readonly [number, number, number];
  readonly sessions: Simulated['sessions'];
}

const quantile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const low = sorted[Math.floor(place)]!;
  return low + (sorted[Math.ceil(place)]! - low) * (place - Math.floor(place));
};

const sharesOf = (words: readonly DecisionWord[]): Record<DecisionWord, number> =>
  Object.fromEntries(
    decisions.map((word) => [
      word,
      words.length === 0 ? 0 : words.filter((one) => one === word).length / words.length,
    ]),
  ) as Record<DecisionWord, number>;

export const summarise = (
  type: DiaryType,
  settings: SimulationSettings,
  patients: number,
  seed: number,
): TypeSummary => {
  const random = seeded(seed);
  const all = Array.from({ length: patients }, () => simulatePatient(type, settings, random));
  const made = all.flatMap((one) => one.decisions);
  const inFlare = made.filter((one) => one.isFlare);
  const counts = new Map<string, number>();
  for (const { word, rules } of made) {
    if (word !== 'progress') for (const rule of new Set(rules)) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  }
  const ends = all.map((one) => one.endShare);
  const total = (name: keyof Simulated['sessions']): number =>
    all.reduce((sum, one) => sum + one.sessions[name], 0);
  return {
    type,
    patients,
    decisions: made.length,
    shares: sharesOf(made.map((one) => one.word)),
    flareDecisions: inFlare.length,
    flareShares: sharesOf(inFlare.map((one) => one.word)),
    rules: [...counts]
      .sort((a, b) => b[1] - a[1])
      .map(([rule, count]) => [rule, count / Math.max(1, made.length)] as const),
    dose: [quantile(ends, 0.25), quantile(ends, 0.5), quantile(ends, 0.75)],
    sessions: { full: total('full'), easier: total('easier'), none: total('none') },
  };
};
