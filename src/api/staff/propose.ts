/** From what a clinician asks for to a whole proposed dose: checked, computed, with its cautions and working. */

import { exerciseById, jointsLoaded } from '#core/catalogue/catalogue.ts';
import { exerciseCautions } from '#core/catalogue/cautions.ts';
import type { Anthropometry, Exercise } from '#core/catalogue/exercise.ts';
import type { Caution } from '#core/caution.ts';
import { cautionsFor } from '#core/cautions/cautions-for.ts';
import { type ChoiceValues, defaultsOf } from '#core/clinic-choice.ts';
import { ageYears } from '#core/day.ts';
import type { Joint } from '#core/joints.ts';
import type { Dose } from '#core/model/dose.ts';
import {
  type LowLoadWish,
  lowLoadWishFields,
  type OcclusionWishInput,
  occlusionWishFields,
  type VariationWish,
  variationWishFields,
} from '#core/model/dose-wish.ts';
import type { Measurement } from '#core/model/measurement.ts';
import type { MethodOutcome, Screening } from '#core/model/screening.ts';
import { occlusionChoices } from '#core/occlusion/choices.ts';
import { type CuffWish, proposeOcclusionDose } from '#core/occlusion/occlusion-dose.ts';
import type { Note, Outcome } from '#core/outcome.ts';
import { closedRefusals, outcomesOf } from '#core/prescribing/opening.ts';
import { strengthChoices } from '#core/strength/choices.ts';
import { proposeLowLoadDose } from '#core/strength/low-load-dose.ts';
import { variationChoices } from '#core/variation/choices.ts';
import { proposeVariationDose } from '#core/variation/variation-dose.ts';
import type { Access } from '#data/access.ts';
import { choicesOf } from '#data/choices.ts';
import { measurementsOf } from '#data/measurements.ts';
import type { Patient } from '#data/people.ts';
import { newestScreening } from '#data/screenings.ts';
import { Problem, refusedWith } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { outcomesFor } from './screening.ts';

export interface ProposedPrescription {
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly joints: readonly Joint[];
  readonly cautions: readonly Caution[];
  readonly working: readonly { readonly text: string; readonly support: string }[];
  readonly notes: readonly Note[];
}

interface Ground {
  readonly access: Access;
  readonly patient: Patient;
  readonly screening: Screening | null;
  readonly outcomes: readonly MethodOutcome[];
  readonly measurements: readonly Measurement[];
  readonly choices: ChoiceValues;
}

interface Dosed {
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly working: readonly { readonly text: string; readonly support: string }[];
  readonly notes: readonly Note[];
}

const newestOf = <K extends Measurement['kind']>(rows: readonly Measurement[], kind: K) =>
  rows.filter((row): row is Extract<Measurement, { kind: K }> => row.kind === kind).at(-1) ?? null;

const unwrapped = <R>(outcome: Outcome<R>): { result: R; notes: readonly Note[] } => {
  if (!outcome.ok) throw refusedWith(outcome.refused);
  return outcome;
};

/** The newest repetitions to failure of the exercise and side asked for. */
const newestTest = (ground: Ground, wish: Pick<LowLoadWish, 'exerciseId' | 'side'>) =>
  ground.measurements
    .filter((row) => row.kind === 'repetitions-to-failure')
    .filter((row) => row.exerciseId === wish.exerciseId && row.side === wish.side)
    .at(-1);

const dosedLowLoad = (ground: Ground, wish: LowLoadWish): Dosed => {
  const { method: _method, exerciseId, side, knownOneRepMaxKg, ...rest } = wish;
  const test = newestTest(ground, wish);
  const from =
    knownOneRepMaxKg === undefined
      ? { test: test && { loadKg: test.loadKg, repetitions: test.repetitions } }
      : { knownOneRepMaxKg };
  if (knownOneRepMaxKg === undefined && !test) {
    throw new Problem(
      'refused',
      'Record repetitions to failure for this exercise and side first, or give a maximum already known.',
    );
  }
  const availableKg = ground.patient.profile?.ownedLoadsKg ?? [];
  if (availableKg.length === 0)
    throw new Problem('refused', 'Enter the loads the patient owns first; the dose is rounded to them.');
  const input = {
    ...rest,
    ...from,
    availableKg,
    ageYears: ageYears(ground.patient.birthDay, ground.access.day),
  };
  const { result, notes } = unwrapped(proposeLowLoadDose({ exerciseId, side }, input, ground.choices));
  const working = result.working.map((line) => ({
    text: `${line.label}: ${line.how}`,
    support: line.source,
  }));
  return { dose: result.dose, badDay: result.badDay, working, notes: [...result.warnings, ...notes] };
};

const personOf = (ground: Ground): Anthropometry => {
  const mass = newestOf(ground.measurements, 'body-mass');
  const stature = newestOf(ground.measurements, 'stature');
  const sex = ground.patient.profile?.formulaSex;
  if (!mass || !stature || !sex) {
    throw new Problem(
      'refused',
      'Record body mass, stature and which coefficients to use first; the variation is ordered by them.',
    );
  }
  return { sex, massKg: mass.massKg, statureCm: stature.statureCm };
};

const dosedVariation = (ground: Ground, wish: VariationWish): Dosed => {
  const { method: _method, ...rest } = wish;
  const test = newestTest(ground, wish);
  const tested = test && { repetitions: test.repetitions, reserve: 0 };
  const input = { ...rest, person: personOf(ground), tested };
  const { result, notes } = unwrapped(proposeVariationDose(input, ground.choices));
  return { dose: result.dose, badDay: result.badDay, working: result.working, notes };
};

const cuffOf = (wish: OcclusionWishInput): CuffWish => {
  if (wish.cuffKind === 'elastic-wrap') {
    if (wish.tightness === undefined)
      throw new Problem('refused', 'Give the tightness of the wrap, 0 to 10. A wrap has no pressure.');
    return { kind: 'elastic-wrap', tightness: wish.tightness };
  }
  const { cuffWidthCm, position, percent } = wish;
  if (cuffWidthCm === undefined || position === undefined || percent === undefined) {
    throw new Problem(
      'refused',
      'Give the cuff width, the position and the share of the measured occlusion pressure.',
    );
  }
  return { kind: 'pneumatic', widthCm: cuffWidthCm, position, percent };
};

const dosedOcclusion = (ground: Ground, wish: OcclusionWishInput): Dosed => {
  const {
    exerciseId,
    limb,
    side,
    schemeId,
    secondsPerRepetition,
    restSeconds,
    sessionsPerWeek,
    loadKg,
    supervised,
    home,
  } = wish;
  const outcome =
    ground.outcomes.find((row) => row.method === 'occlusion' && row.limb === limb && row.side === side) ??
    null;
  const { result, notes } = unwrapped(
    proposeOcclusionDose({
      wish: {
        exerciseId,
        limb,
        side,
        schemeId,
        secondsPerRepetition,
        restSeconds,
        sessionsPerWeek,
        loadKg,
        oneRepMaxKg: wish.knownOneRepMaxKg ?? null,
        cuff: cuffOf(wish),
        supervised,
        home,
      },
      outcome,
      measurements: ground.measurements,
      today: ground.access.day,
      choices: ground.choices,
    }),
  );
  return { ...result, notes };
};

const methodOf = (value: unknown): string =>
  typeof value === 'object' && value !== null && 'method' in value ? String(value.method) : '';

const dosed = (ground: Ground, value: unknown): Dosed => {
  switch (methodOf(value)) {
    case 'low-load':
      return dosedLowLoad(ground, checked(lowLoadWishFields, value));
    case 'variation':
      return dosedVariation(ground, checked(variationWishFields, value));
    case 'occlusion':
      return dosedOcclusion(ground, checked(occlusionWishFields, value));
    default:
      throw new Problem('refused', 'Choose a method: variation, low load or occlusion.');
  }
};

const exerciseFor = (dose: Dose): Exercise => {
  const exercise = exerciseById(dose.exerciseId);
  if (!exercise) throw new Problem('refused', 'Choose an exercise from the catalogue.');
  if (!exercise.methods.includes(dose.method)) {
    throw new Problem('refused', `“${exercise.title}” is not offered for this method.`);
  }
  return exercise;
};

const groundFor = async (access: Access, patient: Patient): Promise<Ground> => {
  const defaults = {
    ...defaultsOf(strengthChoices),
    ...defaultsOf(variationChoices),
    ...defaultsOf(occlusionChoices),
  };
  return {
    access,
    patient,
    screening: await newestScreening(access, patient.id),
    outcomes: await outcomesFor(access, patient),
    measurements: await measurementsOf(access, patient.id),
    choices: { ...defaults, ...(await choicesOf(access)) },
  };
};

/** Cautions of a dose for this patient as things stand. */
export const cautionsOf = (
  ground: Pick<Ground, 'screening' | 'measurements'>,
  dose: Dose,
  joints: readonly Joint[],
): readonly Caution[] => {
  const exercise = exerciseFor(dose);
  return cautionsFor({
    dose,
    screening: ground.screening,
    measurements: ground.measurements,
    joints,
    exerciseCautions: exerciseCautions.filter((caution) => exercise.cautions.includes(caution.id)),
  });
};

/** Throws refusals when the method is closed for this exercise now. */
export const requireOpen = async (access: Access, patient: Patient, dose: Dose): Promise<void> => {
  const exercise = exerciseFor(dose);
  const closed = closedRefusals(
    outcomesOf(await outcomesFor(access, patient), dose.method, exercise, dose.side),
  );
  if (closed.length > 0) throw refusedWith(closed);
};

export const propose = async (
  access: Access,
  patient: Patient,
  wish: unknown,
): Promise<ProposedPrescription> => {
  const ground = await groundFor(access, patient);
  const { dose, badDay, working, notes } = dosed(ground, wish);
  const exercise = exerciseFor(dose);
  const closed = closedRefusals(outcomesOf(ground.outcomes, dose.method, exercise, dose.side));
  if (closed.length > 0) throw refusedWith(closed);
  const joints = jointsLoaded(dose.exerciseId, dose.side);
  return { dose, badDay, joints, cautions: cautionsOf(ground, dose, joints), working, notes };
};
