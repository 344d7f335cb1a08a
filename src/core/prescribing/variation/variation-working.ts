/** The working of a proposed variation, line by line, each with what stands behind it. */
import type { Exercise, Level } from '#core/exercises/exercise.ts';
import type { NeighbouringLevel } from '#core/exercises/ladder/ladder.ts';
import type { StartFit } from '#core/exercises/ladder/start-level.ts';
import type { Setting } from '#core/exercises/setting.ts';
import type { VariationSource } from '#core/sources/variation.ts';
import type { Hold, VariationDose } from '../dose.ts';
import type { VariationDoseInput } from './variation-dose-input.ts';

export interface VariationWorkingLine {
  readonly text: string;
  /** Source key, "clinic-choice", "clinician" or "common-practice". */
  readonly support: string;
}

export interface WorkingContext {
  readonly input: VariationDoseInput;
  readonly dose: VariationDose;
  readonly badDay: VariationDose;
  readonly exercise: Exercise;
  readonly level: Level;
  readonly next: NeighbouringLevel | null;
  readonly fit: StartFit;
}

const modelSource: Readonly<Record<Setting['kind'], VariationSource>> = {
  'push-up': 'de-leva-1996',
  'wall-push-up': 'de-leva-1996',
  'sit-to-stand': 'yoshioka-2014',
  'moved-mass': 'de-leva-1996',
  bridge: 'de-leva-1996',
  'heel-raise': 'drillis-contini-1966',
  'limb-lift': 'de-leva-1996',
  'lean-back-row': 'melrose-dawes-2015',
};

const figureSource = (exercise: Exercise, level: Level): string => {
  if (!exercise.setting) return 'common-practice';
  if (exercise.setting.kind === 'push-up' && level.measuredShare !== null) return 'ebben-2011';
  return modelSource[exercise.setting.kind];
};

const figureLines = ({ exercise, level, input }: WorkingContext): readonly VariationWorkingLine[] => {
  const support = figureSource(exercise, level);
  const lines: VariationWorkingLine[] = [];
  if (level.shareOfBodyMass !== null && level.effectiveLoadKg !== null) {
    const share = (level.shareOfBodyMass * 100).toFixed(0);
    lines.push({
      text: `Effective load: ${share} % of ${input.person.massKg} kg = ${level.effectiveLoadKg.toFixed(1)} kg, ${level.effectiveLoadAbout}.`,
      support: exercise.setting?.kind === 'sit-to-stand' ? 'de-leva-1996' : support,
    });
  }
  if (level.measure) {
    const { about, value, unit } = level.measure;
    lines.push({
      text: `Ordered by ${about}: ${value.toFixed(1)}${unit === '1' ? '' : ` ${unit}`}.`,
      support,
    });
  } else {
    lines.push({ text: level.remark, support });
  }
  return lines;
};

/** A figure the clinician gave is theirs; the rest is the clinic's choice. */
const behind = (given: number | undefined): string => (given === undefined ? 'clinic-choice' : 'clinician');

const holdLines = (
  input: VariationDoseInput,
  dose: VariationDose,
  { seconds, mostSeconds }: Hold,
): readonly VariationWorkingLine[] => [
  { text: `Each held ${seconds} s, not counted if let go before.`, support: behind(input.holdSeconds) },
  { text: `Steps lead to holds of ${mostSeconds} s.`, support: behind(input.mostHoldSeconds) },
  { text: `Let go between two: ${dose.secondsPerRepetition - seconds} s.`, support: 'clinic-choice' },
];

const workLines = ({ input, dose }: WorkingContext): readonly VariationWorkingLine[] => [
  ...(input.addedKg === undefined
    ? []
    : [{ text: `Load added: ${input.addedKg} kg, typed for this patient.`, support: 'clinician' }]),
  { text: `Sets: ${dose.sets}.`, support: behind(input.sets) },
  {
    text: `${dose.hold ? 'Holds' : 'Repetitions'}: ${dose.repetitions.low} to ${dose.repetitions.high}.`,
    support: behind(input.repetitionsLow ?? input.repetitionsHigh),
  },
  ...(dose.hold ? holdLines(input, dose, dose.hold) : []),
  ...(dose.mark === undefined
    ? []
    : [{ text: `Mark ${dose.mark} of the clinic’s own row; its force is not known.`, support: 'clinician' }]),
  {
    text: `${dose.hold ? 'Holds' : 'Repetitions'} in reserve: ${dose.reserve}.`,
    support: behind(input.reserve),
  },
  { text: `Rest: ${dose.restSeconds} s.`, support: behind(input.restSeconds) },
  ...(dose.hold
    ? []
    : [
        {
          text: `One repetition: ${dose.secondsPerRepetition} s, lowering and lifting.`,
          support: behind(input.secondsPerRepetition),
        },
      ]),
  { text: `Sessions a week: ${dose.sessionsPerWeek}.`, support: behind(input.sessionsPerWeek) },
];

const startLine = ({ input, dose, fit }: WorkingContext): VariationWorkingLine => {
  const { tested } = input;
  if (!tested) return { text: 'Start: no test of this level is on record.', support: 'common-practice' };
  const { low, high } = dose.repetitions;
  return {
    text:
      `Start: ${tested.repetitions} done and ${tested.reserve} left make ${tested.repetitions + tested.reserve} to ` +
      `failure; the band with its reserve asks ${low + dose.reserve} to ${high + dose.reserve}: ${fit.replace('-', ' ')}.`,
    support: 'common-practice',
  };
};

export const variationWorking = (context: WorkingContext): readonly VariationWorkingLine[] => [
  startLine(context),
  ...figureLines(context),
  ...workLines(context),
  {
    text:
      context.badDay.exerciseId === context.dose.exerciseId
        ? `Bad day: ${context.badDay.sets} set(s) of the same, to ${context.badDay.repetitions.high}.`
        : `Bad day: the rung below, to ${context.badDay.repetitions.high}.`,
    support: 'clinic-choice',
  },
];
