/**
 * The way back. After one clear evaluation the dose returns half-way toward one that was signed and
 * tolerated lately. It is named as a return and not as a step; being an increase it waits for a signature.
 */
import type { Dose, OcclusionDose, VariationDose } from '#core/prescribing/dose.ts';
import { milligrams } from '#core/units/units.ts';
import { type EngineSettingValues, engineVersionOf } from '../settings.ts';
import type { Candidate } from './proposal.ts';
import { heldFor, shareOf } from './volume.ts';

export interface ToleratedDose {
  readonly dose: Dose;
  /** Day number of the last session the joints tolerated at it. */
  readonly day: number;
}

/**
 * The dose under a share of which no cut goes: since version 2 the most that was tolerated lately, because
 * read from the last one the floor sank with every cut; the dose last signed where none was tolerated.
 */
export const floorDose = (
  tolerated: readonly ToleratedDose[],
  present: Dose,
  signed: Dose,
  day: number,
  settings: EngineSettingValues,
): Dose => {
  const byDay = [...tolerated].sort((a, b) => b.day - a.day);
  if (engineVersionOf(settings) < 2) return byDay[0]?.dose ?? signed;
  const lately = byDay.filter((one) => day - one.day <= settings['return-within-days']);
  const share = (dose: Dose): number => shareOf(dose, present) ?? Number.NEGATIVE_INFINITY;
  return lately.sort((a, b) => share(b.dose) - share(a.dose))[0]?.dose ?? signed;
};

const halfWay = (from: number, to: number): number => from + Math.ceil(Math.max(0, to - from) / 2);

type Banded = Exclude<Dose, OcclusionDose>;

const halfWayBanded = (dose: Banded, target: Banded): Banded | null => {
  const sets = halfWay(dose.sets, target.sets);
  const low = halfWay(dose.repetitions.low, target.repetitions.low);
  if (sets === dose.sets && low === dose.repetitions.low) return null;
  const high = Math.max(low, halfWay(dose.repetitions.high, target.repetitions.high));
  return { ...dose, sets, repetitions: { low, high } };
};

const halfWayScheme = (dose: OcclusionDose, target: OcclusionDose): OcclusionDose | null => {
  const length = halfWay(dose.scheme.length, target.scheme.length);
  const scheme = target.scheme
    .slice(0, length)
    .map((wanted, place) => halfWay(dose.scheme[place] ?? 0, wanted));
  const kept = dose.scheme.slice(scheme.length);
  const whole = [...scheme, ...kept];
  if (whole.length === dose.scheme.length && whole.every((count, place) => count === dose.scheme[place])) {
    return null;
  }
  return { ...dose, scheme: whole, sets: whole.length };
};

const heavier = <D extends { readonly loadKg: number }>(
  dose: D,
  target: D,
  loadsKg: readonly number[],
): D | null => {
  if (milligrams(target.loadKg) <= milligrams(dose.loadKg)) return null;
  const middle = (dose.loadKg + target.loadKg) / 2;
  const between = loadsKg.filter((kg) => kg > dose.loadKg && milligrams(kg) <= milligrams(middle));
  const loadKg = between.length > 0 ? Math.max(...between) : target.loadKg;
  return loadsKg.some((kg) => milligrams(kg) === milligrams(loadKg)) ? { ...target, loadKg } : null;
};

/** Holds come back before their seconds; toward shorter ones there is no way back. */
const halfWayHeld = (dose: VariationDose, target: VariationDose): Banded | null => {
  const [seconds, wanted] = [dose.hold?.seconds ?? 0, target.hold?.seconds ?? 0];
  if (wanted < seconds) return null;
  return halfWayBanded(dose, target) ?? (wanted > seconds ? heldFor(dose, halfWay(seconds, wanted)) : null);
};

/** Half of the way in repetitions and sets; only when those are back does the load follow. */
export const halfWayTo = (dose: Dose, target: Dose, loadsKg: readonly number[]): Dose | null => {
  if (dose.exerciseId !== target.exerciseId) return null;
  if (dose.method === 'occlusion' && target.method === 'occlusion') {
    return halfWayScheme(dose, target) ?? heavier(dose, target, loadsKg);
  }
  if (dose.method === 'low-load' && target.method === 'low-load') {
    return halfWayBanded(dose, target) ?? heavier(dose, target, loadsKg);
  }
  if (dose.method === 'variation' && target.method === 'variation' && dose.addedKg === target.addedKg) {
    return halfWayHeld(dose, target);
  }
  return null;
};

/** The latest tolerated dose that asks for more than the present one, inside the days it still speaks for. */
const returnTarget = (
  dose: Dose,
  tolerated: readonly ToleratedDose[],
  day: number,
  settings: EngineSettingValues,
): Dose | null => {
  const fitting = tolerated.filter((one) => {
    const share = shareOf(one.dose, dose);
    return day - one.day <= settings['return-within-days'] && share !== null && share > 1 + 1e-9;
  });
  return fitting.sort((a, b) => b.day - a.day)[0]?.dose ?? null;
};

/** A way back leads only to a dose tolerated before a cut: without a cut there is nothing to return from. */
export const returnStep = (
  dose: Dose,
  tolerated: readonly ToleratedDose[],
  day: number,
  lastCutDay: number | null,
  loadsKg: readonly number[],
  settings: EngineSettingValues,
): Candidate | null => {
  if (lastCutDay === null) return null;
  const before = tolerated.filter((one) => one.day <= lastCutDay);
  const target = returnTarget(dose, before, day, settings);
  const back = target && halfWayTo(dose, target, loadsKg);
  return back ? { kind: 'return', dose: back, named: ['return-not-step'] } : null;
};
