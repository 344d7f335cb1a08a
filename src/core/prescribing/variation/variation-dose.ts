/**
 * Proposes the dose of a variation: the level to start on, sets, repetition band, reserve, rest and
 * tempo, with its working, its bad-day session and the size of the step that would come next. It
 * computes; it has not asked the joint, and a clinician signs.
 */
import { exerciseById, exercises } from '#core/exercises/catalogue.ts';
import type { Exercise, Level, WorkedSide } from '#core/exercises/exercise.ts';
import type { OnSide } from '#core/exercises/ladder/added-demands.ts';
import { type NeighbouringLevel, nextLevel } from '#core/exercises/ladder/ladder.ts';
import { levelOf } from '#core/exercises/ladder/level.ts';
import { easierStart, type StartFit, startFit } from '#core/exercises/ladder/start-level.ts';
import { answer, type Note, type Outcome, type Refusal, refuse } from '#core/outcome.ts';
import { checkSettings, type SettingValues } from '#core/sources/clinic-setting.ts';
import type { VariationDose } from '../dose.ts';
import { heldParts, heldRefusals, markKept } from './held.ts';
import { variationSettings } from './settings.ts';
import { variationBadDay } from './variation-bad-day.ts';
import type { VariationDoseInput } from './variation-dose-input.ts';
import { variationDoseNotes } from './variation-dose-notes.ts';
import { type VariationWorkingLine, variationWorking } from './variation-working.ts';

export interface VariationProposal {
  readonly dose: VariationDose;
  readonly badDay: VariationDose;
  readonly rung: Level;
  readonly next: NeighbouringLevel | null;
  readonly start: StartFit;
  readonly working: readonly VariationWorkingLine[];
}

/** Only this area's choices, so that a clinic's whole list may be handed in. */
const ownSettings = (settings: SettingValues): SettingValues =>
  Object.fromEntries(variationSettings.map(({ id }) => [id, settings[id] ?? Number.NaN]));

const refusal = (field: string, code: Refusal['code'], reason: string): Refusal => ({
  field: `input.${field}`,
  code,
  reason,
});

/** What stands in the way of dosing this exercise on this side. */
const exerciseRefusals = (exercise: Exercise | undefined, side: WorkedSide): readonly Refusal[] => {
  if (!exercise) return [refusal('exerciseId', 'not-listed', 'Choose an exercise from the catalogue.')];
  if (!exercise.methods.includes('variation')) {
    return [refusal('exerciseId', 'inconsistent', 'This exercise is not offered as a variation.')];
  }
  if (exercise.limbsAtOnce === 'both' && side !== 'both') {
    return [refusal('side', 'inconsistent', 'Both limbs work together here: give the side as both.')];
  }
  if (exercise.limbsAtOnce === 'one' && side === 'both') {
    return [refusal('side', 'inconsistent', 'One limb works here: give left or right, and dose each side.')];
  }
  return [];
};

const doseOn = (start: OnSide, input: VariationDoseInput, settings: SettingValues): VariationDose => {
  const setting = (id: string): number => settings[`variation-${id}`] ?? Number.NaN;
  return {
    method: 'variation',
    exerciseId: start.exerciseId,
    side: start.side,
    sets: input.sets ?? setting('sets'),
    repetitions: {
      low: input.repetitionsLow ?? setting('repetitions-low'),
      high: input.repetitionsHigh ?? setting('repetitions-high'),
    },
    reserve: input.reserve ?? setting('reserve'),
    restSeconds: input.restSeconds ?? setting('rest-seconds'),
    secondsPerRepetition: input.secondsPerRepetition ?? setting('seconds-per-repetition'),
    sessionsPerWeek: input.sessionsPerWeek ?? setting('sessions-per-week'),
    effectiveLoadKg: null,
    addedKg: input.addedKg ?? 0,
    ...heldParts({ ...input, exerciseId: start.exerciseId }, settings),
  };
};

const bandRefusals = ({ repetitions }: VariationDose): readonly Refusal[] =>
  repetitions.low > repetitions.high
    ? [refusal('repetitionsLow', 'inconsistent', 'The low end of the band is above its high end.')]
    : [];

export const proposeVariationDose = (
  input: VariationDoseInput,
  clinicSettings: SettingValues,
): Outcome<VariationProposal> => {
  const settings = ownSettings(clinicSettings);
  const requested = doseOn(input, input, settings);
  const refused = [
    ...checkSettings(variationSettings, settings),
    ...exerciseRefusals(exerciseById(input.exerciseId), input.side),
    ...bandRefusals(requested),
    ...heldRefusals(input, requested),
  ];
  if (refused.length > 0) return { ok: false, refused };
  const fit = startFit(input.tested, requested.repetitions, requested.reserve);
  const easier = fit === 'too-hard' ? easierStart(input, input.person) : null;
  if (easier && input.addedKg !== undefined)
    return refuse(
      'addedKg',
      'inconsistent',
      'By the last test this level is too hard already, so the level below is proposed, without a load. Leave it empty, or test again.',
    );
  const start = easier ?? { exerciseId: input.exerciseId, side: input.side };
  const exercise = exerciseById(start.exerciseId);
  if (!exercise) throw new RangeError(`The ladder led to an unknown exercise, ${start.exerciseId}.`);
  const level = levelOf(exercise, input.person);
  const asked = markKept(requested, start.exerciseId);
  const dose = { ...asked, ...start, effectiveLoadKg: level.effectiveLoadKg };
  const badDay = variationBadDay(dose, input.person, settings);
  const next = nextLevel(start.exerciseId, input.person);
  const notes: readonly Note[] = variationDoseNotes({
    dose,
    badDay,
    level,
    next,
    fit,
    movedDown: easier !== null,
    settings,
  });
  const working = variationWorking({ input, dose, badDay, exercise, level, next, fit });
  return answer({ dose, badDay, rung: level, next, start: fit, working }, notes);
};

/** Ids that may be dosed as variations, for forms and the desk. */
export const variationExerciseIds: readonly string[] = exercises
  .filter((exercise) => exercise.methods.includes('variation'))
  .map((exercise) => exercise.id);
