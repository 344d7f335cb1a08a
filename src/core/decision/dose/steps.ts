/**
 * One step up, by method, in one variable. Repetitions come first and need one session on target; load,
 * level, set and the seconds of a hold need the larger step. A step in load, level or seconds starts the
 * repetitions again at the foot of the signed band. Never onto a load that does not exist where it is done;
 * over 10 % only by name, and on a machine, whose plates are what they are, not at all.
 */
import type {
  Dose,
  LowLoadDose,
  OcclusionDose,
  RepetitionBand,
  VariationDose,
} from '#core/prescribing/dose.ts';
import { nextOwnedLoad } from '#core/prescribing/low-load/load-step.ts';
import { percentOfOneRepMax } from '#core/prescribing/occlusion/limits.ts';
import { restrictionSeconds } from '#core/prescribing/occlusion/restriction-time.ts';
import { machineOf } from '#core/prescribing/place-of-dose.ts';
import { markKept } from '#core/prescribing/variation/held.ts';
import { milligrams } from '#core/units/units.ts';
import type { Step } from '../answers.ts';
import type { EngineSettingValues } from '../settings.ts';
import { forbidsHarderVariation, isOverCeiling, type LimitInForce, loadCeilingKg } from './limits.ts';
import type { Candidate, Ladder } from './proposal.ts';
import { heldFor } from './volume.ts';

export interface StepContext {
  readonly largestStep: Step;
  readonly settings: EngineSettingValues;
  /** Those that exist where the dose is done. */
  readonly loadsKg: readonly number[];
  readonly limits: readonly LimitInForce[];
  readonly ladder: Ladder;
  /** The dose a clinician last signed for this line: its band and its scheme are where steps lead. */
  readonly signed: Dose;
}

/** Top of the low-load range the trial nearest to this use worked in. */
const lowLoadTopPercent = 50;

const same = (dose: Dose, worklist: Candidate['worklist'] = []): Candidate => ({
  kind: 'same',
  dose,
  worklist,
});

const step = (dose: Dose, named: Candidate['named'] = []): Candidate => ({ kind: 'step', dose, named });

/** Toward the top of the signed band, which a cut may have lowered; null once the floor is there. */
const moreRepetitions = (band: RepetitionBand, signed: Dose, by: number): RepetitionBand | null => {
  const top = signed.method === 'occlusion' ? band.high : Math.max(band.high, signed.repetitions.high);
  if (band.low >= top) return null;
  return { low: Math.min(top, band.low + by), high: Math.min(top, band.high + by) };
};

/** The foot of the signed band, and never more than is asked now. */
const restart = (band: RepetitionBand, signed: Dose): RepetitionBand =>
  signed.method === 'occlusion' ? band : { ...band, low: Math.min(band.low, signed.repetitions.low) };

interface LoadChoice {
  readonly loadKg: number;
  readonly isOverStep: boolean;
}

/** The next load of the place under every bound; a word for what stands in the way otherwise. */
const nextLoad = (
  loadKg: number,
  mostKg: number,
  context: StepContext,
): LoadChoice | 'nothing-left-to-step' | 'limit-stands-in-the-way' => {
  const next = nextOwnedLoad(loadKg, context.loadsKg);
  if (!next || milligrams(next.loadKg) > milligrams(mostKg)) return 'nothing-left-to-step';
  if (isOverCeiling(next.loadKg, loadCeilingKg(context.limits))) return 'limit-stands-in-the-way';
  const allowed = milligrams(loadKg) * (100 + context.settings['load-step-percent']);
  return { loadKg: next.loadKg, isOverStep: milligrams(next.loadKg) * 100 > allowed };
};

export const stepLowLoad = (dose: LowLoadDose, context: StepContext): Candidate => {
  const repetitions = moreRepetitions(dose.repetitions, context.signed, context.settings['repetition-step']);
  if (repetitions) return step({ ...dose, repetitions });
  if (context.largestStep === 'repetitions') return same(dose);
  const mostKg =
    dose.oneRepMaxKg === null ? Number.POSITIVE_INFINITY : (dose.oneRepMaxKg * lowLoadTopPercent) / 100;
  const next = nextLoad(dose.loadKg, mostKg, context);
  const heavier = (setting: LoadChoice): LowLoadDose => ({
    ...dose,
    loadKg: setting.loadKg,
    repetitions: restart(dose.repetitions, context.signed),
  });
  if (typeof next !== 'string' && !next.isOverStep) return step(heavier(next), ['repetitions-start-again']);
  if (dose.sets < context.settings['most-sets']) return step({ ...dose, sets: dose.sets + 1 });
  if (typeof next === 'string') return same(dose, [next]);
  if (machineOf(dose)) return { kind: 'same', dose, withheld: 'machine-step' };
  return step(heavier(next), ['over-ten-percent', 'repetitions-start-again']);
};

/** Once the holds are at the top of their band each is held longer, up to what was signed; null where it is. */
const longerHold = (dose: VariationDose, context: StepContext): Candidate | null => {
  if (!dose.hold || dose.hold.seconds >= dose.hold.mostSeconds) return null;
  const seconds = Math.min(dose.hold.mostSeconds, dose.hold.seconds + context.settings['hold-step-seconds']);
  const isOver = seconds * 100 > dose.hold.seconds * (100 + context.settings['load-step-percent']);
  const longer = { ...heldFor(dose, seconds), repetitions: restart(dose.repetitions, context.signed) };
  return step(longer, [...(isOver ? (['over-ten-percent'] as const) : []), 'repetitions-start-again']);
};

export const stepVariation = (dose: VariationDose, context: StepContext): Candidate => {
  const repetitions = moreRepetitions(dose.repetitions, context.signed, context.settings['repetition-step']);
  if (repetitions) return step({ ...dose, repetitions });
  if (context.largestStep === 'repetitions') return same(dose);
  if (forbidsHarderVariation(context.limits)) return same(dose, ['limit-stands-in-the-way']);
  const longer = longerHold(dose, context);
  if (longer) return longer;
  const next = context.ladder.harder(dose.exerciseId, dose.side);
  if (!next?.equipmentOwned) return same(dose, ['nothing-left-to-step']);
  if (next.side === null) return same(dose, ['side-to-choose']);
  const harder: VariationDose = {
    ...markKept(dose, next.exerciseId),
    exerciseId: next.exerciseId,
    side: next.side ?? dose.side,
    effectiveLoadKg: next.effectiveLoadKg,
    repetitions: restart(dose.repetitions, context.signed),
  };
  const isOver = next.stepPercent !== null && next.stepPercent > context.settings['load-step-percent'];
  return step(harder, [
    ...(next.stepPercent === null ? (['step-size-unknown'] as const) : []),
    ...(isOver ? (['over-ten-percent'] as const) : []),
    'repetitions-start-again',
    ...(next.addsDemand ? (['loads-more-joints'] as const) : []),
  ]);
};

const fitsUnderCap = (dose: OcclusionDose): boolean =>
  restrictionSeconds({ ...dose, repetitions: dose.scheme }).restrictedSeconds <= dose.capSeconds;

/** One set nearer to the signed scheme by a step of repetitions; the first set that lags is filled first. */
const towardScheme = (dose: OcclusionDose, target: readonly number[], by: number): OcclusionDose | null => {
  const set = target.slice(0, dose.scheme.length).findIndex((wanted, place) => dose.scheme[place]! < wanted);
  if (set < 0) return null;
  const scheme = dose.scheme.map((repetitions, place) =>
    place === set ? Math.min(target[set]!, repetitions + by) : repetitions,
  );
  return { ...dose, scheme };
};

const oneMoreSet = (dose: OcclusionDose, target: readonly number[]): OcclusionDose | null => {
  const repetitions = target[dose.scheme.length];
  if (repetitions === undefined) return null;
  const scheme = [...dose.scheme, repetitions];
  return { ...dose, scheme, sets: scheme.length };
};

/** Pressure is not here: it moves only when a clinician says so. */
export const stepOcclusion = (
  dose: OcclusionDose,
  target: readonly number[],
  context: StepContext,
): Candidate => {
  const more = towardScheme(dose, target, context.settings['repetition-step']);
  if (more && fitsUnderCap(more)) return step(more);
  if (context.largestStep === 'repetitions') return same(dose);
  const longer = more ? null : oneMoreSet(dose, target);
  if (longer && fitsUnderCap(longer)) return step(longer);
  if (dose.oneRepMaxKg === null) return same(dose, ['one-rep-max-missing']);
  const mostKg = (dose.oneRepMaxKg * percentOfOneRepMax.value.high) / 100;
  const next = nextLoad(dose.loadKg, mostKg, context);
  if (typeof next === 'string') return same(dose, [next]);
  return step({ ...dose, loadKg: next.loadKg }, next.isOverStep ? ['over-ten-percent'] : []);
};
