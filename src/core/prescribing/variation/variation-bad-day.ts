/**
 * The easier session signed together with a variation: the level below where it asks nothing new of
 * the patient, otherwise fewer sets of the same level. Either way only to the low end of the band and
 * further from failure. No study of bad-day sessions was found; every number is a clinic choice.
 */
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Anthropometry } from '#core/exercises/exercise.ts';
import { addedDemands, type OnSide } from '#core/exercises/ladder/added-demands.ts';
import { stepBetween } from '#core/exercises/ladder/ladder.ts';
import { levelOf } from '#core/exercises/ladder/level.ts';
import { easierStart } from '#core/exercises/ladder/start-level.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { VariationDose } from '../dose.ts';
import { markKept } from './held.ts';

/** The easier level must load no further joint and bring no caution the dose does not already carry. */
const asksNothingNew = (from: OnSide, to: OnSide): boolean => {
  const { joints, cautions } = addedDemands(from, to);
  return joints.length === 0 && cautions.length === 0;
};

const easierLevel = (dose: VariationDose, person: Anthropometry) => {
  const start = easierStart(dose, person);
  const from = exerciseById(dose.exerciseId);
  const to = start && exerciseById(start.exerciseId);
  if (!start || !from || !to || !asksNothingNew(dose, start)) return null;
  const level = levelOf(to, person);
  const { percent } = stepBetween(levelOf(from, person), level);
  return percent !== null && percent < 0 ? { start, level } : null;
};

export const variationBadDay = (
  dose: VariationDose,
  person: Anthropometry,
  settings: SettingValues,
): VariationDose => {
  const gentler = {
    ...dose,
    repetitions: { low: dose.repetitions.low, high: dose.repetitions.low },
    reserve: Math.max(dose.reserve, settings['variation-bad-day-reserve'] ?? dose.reserve),
  };
  const easier = easierLevel(dose, person);
  if (!easier)
    return { ...gentler, sets: Math.min(dose.sets, settings['variation-bad-day-sets'] ?? dose.sets) };
  const moved = markKept(gentler, easier.start.exerciseId);
  return { ...moved, ...easier.start, effectiveLoadKg: easier.level.effectiveLoadKg, addedKg: 0 };
};
