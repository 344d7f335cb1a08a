/**
 * What a dose of a held exercise, or one with putty, a ring or a band, has beside repetitions: seconds of each hold,
 * and the number on the piece. Putty, rings and bands are told apart by numbers of the clinic's own row; a colour
 * means another force with each maker, and what force a number is nobody has measured.
 */
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Refusal } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { VariationDose } from '../dose.ts';
import { markedThing } from './marked-things.ts';
import type { VariationDoseInput } from './variation-dose-input.ts';

export const isHeld = (exerciseId: string): boolean => exerciseById(exerciseId)?.isHeld ?? false;

/** Moved to another exercise; a number of putty says nothing of a band, so it stays only on a thing of its kind. */
export const markKept = (dose: VariationDose, exerciseId: string): VariationDose => {
  const { mark, ...unmarked } = dose;
  return mark === undefined || markedThing(dose.exerciseId) === markedThing(exerciseId) ? dose : unmarked;
};

type HeldInput = Pick<
  VariationDoseInput,
  'exerciseId' | 'holdSeconds' | 'mostHoldSeconds' | 'mark' | 'repetitionsLow' | 'repetitionsHigh'
>;

/** The parts of the dose that such an exercise has of its own; nothing for one that moves. */
export const heldParts = (
  { exerciseId, holdSeconds, mostHoldSeconds, mark, repetitionsLow, repetitionsHigh }: HeldInput,
  settings: SettingValues,
): Partial<Pick<VariationDose, 'hold' | 'mark' | 'repetitions' | 'secondsPerRepetition'>> => {
  const named = mark === undefined ? {} : { mark };
  if (!isHeld(exerciseId)) return named;
  const setting = (id: string): number => settings[`variation-${id}`] ?? Number.NaN;
  const seconds = holdSeconds ?? setting('hold-seconds');
  const usualMost = Math.max(seconds, setting('hold-most-seconds'));
  return {
    ...named,
    hold: { seconds, mostSeconds: mostHoldSeconds ?? usualMost },
    repetitions: {
      low: repetitionsLow ?? setting('holds-low'),
      high: repetitionsHigh ?? setting('holds-high'),
    },
    secondsPerRepetition: seconds + setting('hold-release-seconds'),
  };
};

const refusal = (field: string, reason: string): Refusal => ({
  field: `input.${field}`,
  code: 'inconsistent',
  reason,
});

export const heldRefusals = (
  { exerciseId, holdSeconds, mostHoldSeconds, mark, secondsPerRepetition }: VariationDoseInput,
  { hold }: Pick<VariationDose, 'hold'>,
): readonly Refusal[] => [
  ...(!hold && (holdSeconds !== undefined || mostHoldSeconds !== undefined)
    ? [refusal('holdSeconds', 'This exercise moves and is not held. Leave the seconds of a hold empty.')]
    : []),
  ...(hold && secondsPerRepetition !== undefined
    ? [refusal('secondsPerRepetition', 'This exercise is held. Give the seconds of a hold instead.')]
    : []),
  ...(hold && hold.seconds > hold.mostSeconds
    ? [
        refusal(
          'mostHoldSeconds',
          'The longest hold is shorter than the hold to begin with. Raise it, or begin shorter.',
        ),
      ]
    : []),
  ...(mark !== undefined && markedThing(exerciseId) === null
    ? [refusal('mark', 'Nothing of this exercise carries a number. Leave the mark empty.')]
    : []),
];
