/**
 * Usual values proposed from the diary for a clinician to set. Nothing here takes effect by itself:
 * the top of the band is shown and used only when a clinician widens it.
 */

import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { type Day, dayNumber } from '#core/time/day.ts';
import { countUpTo } from '../facts/count-up-to.ts';
import type { JointMorning } from '../facts/indexed-record.ts';
import { isMorningScore, type Moment, mornings, morningsUpTo } from '../facts/judged-session.ts';
import { meanOfMornings } from '../facts/morning-scores.ts';
import { indexRecord } from '../facts/record-index.ts';
import { engineSettingValues } from '../settings.ts';

/** Days of the mornings usual pain is read from. */
export const baselineWindowDays = 14;
/** The scatter for the sum chart may look further back: it needs at least 14 mornings. */
const spreadWindow = 28;

interface BaselineProposal {
  readonly usualPain: number;
  /** In force if set as proposed: the published behaviour. */
  readonly usualPainTop: number;
  /** What a clinician may widen the band to. */
  readonly widestUsualPainTop: number;
  readonly usualStiffnessMinutes: number | null;
  readonly usualFatigue: number | null;
  readonly morningSpread: { readonly standardDeviation: number; readonly values: number };
  readonly mornings: number;
}

export type BaselineAnswer =
  | { readonly ready: true; readonly proposal: BaselineProposal }
  | { readonly ready: false; readonly mornings: number; readonly needed: number };

/** The lower of the two middle values: of two usual heights the more cautious is proposed. */
export const lowerMedian = (values: readonly number[]): number | null => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? null;
};

const deviation = (values: readonly number[]): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return values.length < 2 ? 0 : Math.sqrt(squares / (values.length - 1));
};

/** A day on which the flare question was left open is not known to lie outside a flare. */
const isQuiet = (one: JointMorning): boolean => one.answers.flare === false && one.answers.pain !== null;

const numbers = (values: readonly unknown[]): readonly number[] =>
  values.filter((value): value is number => typeof value === 'number');

export const proposeBaseline = (
  record: PatientRecord,
  joint: Joint,
  day: Day,
  settingValues?: SettingValues,
): BaselineAnswer => {
  const settings = engineSettingValues(settingValues);
  const all = mornings(indexRecord(record), joint);
  const today = dayNumber(day);
  const perDay = new Map<number, JointMorning>();
  for (const one of all.slice(morningsUpTo(all, today - spreadWindow), morningsUpTo(all, today))) {
    if (!perDay.has(one.day) && isQuiet(one) && isMorningScore(one, settings)) perDay.set(one.day, one);
  }
  const quiet = [...perDay.values()];
  const recent = quiet.filter((one) => one.day > today - baselineWindowDays);
  const needed = settings['baseline-mornings'];
  const pains = numbers(recent.map((one) => one.answers.pain));
  const usualPain = lowerMedian(pains);
  if (recent.length < needed || usualPain === null) return { ready: false, mornings: recent.length, needed };
  const secondHighest = [...pains].sort((a, b) => b - a)[1] ?? usualPain;
  const spread = numbers(quiet.map((one) => one.answers.pain));
  return {
    ready: true,
    proposal: {
      usualPain,
      usualPainTop: usualPain,
      widestUsualPainTop: Math.min(usualPain + 2, Math.max(usualPain, secondHighest)),
      usualStiffnessMinutes: lowerMedian(numbers(recent.map((one) => one.answers.stiffnessMinutes))),
      usualFatigue: lowerMedian(numbers(recent.map((one) => one.morning.fatigue))),
      morningSpread: { standardDeviation: deviation(spread), values: spread.length },
      mornings: recent.length,
    },
  };
};

/**
 * Whether the baseline is due for review from now on: usual pain no longer true. That is stored with
 * the baseline and only a clinician ends it. It is not read from the diary at decision time, because
 * there a worse morning would end it.
 */
export const isBaselineDueForReview = (
  record: PatientRecord,
  joint: Joint,
  at: Moment,
  settingValues?: SettingValues,
): boolean => {
  const settings = engineSettingValues(settingValues);
  const index = indexRecord(record);
  const day = dayNumber(at.day);
  const baselines = index.baselinesOf.get(joint) ?? [];
  const baseline = baselines[countUpTo(baselines, day, (one) => one.setDay) - 1];
  if (!baseline || baseline.dueForReview || baseline.usualPain === null) return false;
  const mean = meanOfMornings(
    mornings(index, joint),
    day,
    baselineWindowDays,
    settings['baseline-mornings'],
    at.instant,
    settings,
  );
  return mean !== null && baseline.usualPain - mean >= settings['stale-baseline-fall'];
};
