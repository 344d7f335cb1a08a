/**
 * What a clinician shows the patient of protein and energy: figures of the clinician's own, signed by name.
 * Nothing is shown by itself, and nothing while a lock stands.
 */
import type { Field } from '#core/calculations/describe.ts';
import type { Refusal } from '#core/outcome.ts';
import { generalMinimumGPerKg } from '../protein-bases.ts';
import type { NutritionPicture } from './nutrition-picture.ts';

const grams = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'integer', unit: 'g/d', min: 20, max: 350, about }) as const;

export const adviceFields = [
  grams('proteinLowG', 'Protein a day, at least'),
  grams('proteinHighG', 'Protein a day, at most'),
  { name: 'meals', kind: 'integer', unit: '1', min: 1, max: 8, about: 'Meals it is spread over' },
  {
    name: 'surplusKcal',
    kind: 'integer',
    unit: 'kcal/d',
    min: 0,
    max: 500,
    nullable: true,
    about: 'Energy a day over what is needed; leave it out where none is advised',
  },
  {
    name: 'words',
    kind: 'text',
    minLength: 1,
    maxLength: 500,
    nullable: true,
    about: 'In your words, as the patient reads it',
  },
  {
    name: 'restAnsweredNo',
    kind: 'flag',
    about: 'I asked now what the screening did not ask, and none of it applies',
  },
] as const satisfies readonly Field[];

export interface NutritionAdvice {
  readonly proteinLowG: number;
  readonly proteinHighG: number;
  readonly meals: number;
  /** null = no energy is advised; 0 = none over what is needed. */
  readonly surplusKcal: number | null;
  readonly words: string | null;
}

type Wanted = NutritionAdvice & { readonly restAnsweredNo: boolean };

/** Not signed while something locks, while a question that could lock is open, or the wrong way round. */
export const adviceRefusals = (
  wanted: Wanted,
  { lockReasons, notAsked }: Pick<NutritionPicture, 'lockReasons' | 'notAsked'>,
): readonly Refusal[] => [
  ...(lockReasons.length > 0
    ? [
        {
          field: 'input.proteinLowG',
          code: 'outside-validity' as const,
          reason: 'No figure is shown to this patient: see what closes it above, and refer.',
        },
      ]
    : []),
  ...(notAsked.length > 0 && !wanted.restAnsweredNo
    ? [
        {
          field: 'input.restAnsweredNo',
          code: 'missing' as const,
          reason: 'Ask what the screening did not ask. Any answer but no closes the figures.',
        },
      ]
    : []),
  ...(wanted.proteinLowG > wanted.proteinHighG
    ? [
        {
          field: 'input.proteinHighG',
          code: 'inconsistent' as const,
          reason: `“At most” is not under “at least”: give ${wanted.proteinLowG} g or more.`,
        },
      ]
    : []),
];

type Worked = Pick<NutritionPicture, 'protein' | 'meal' | 'energy'>;

const asked = (isAsked: boolean, question: string): readonly string[] =>
  isAsked ? [`${question} Is it right?`] : [];

/** Asked about before it is signed: under the general minimum, or over every figure worked out here. */
export const adviceQuestions = (
  { proteinLowG, proteinHighG, meals, surplusKcal }: NutritionAdvice,
  massKg: number | null,
  { protein, meal, energy }: Worked,
): readonly string[] => {
  const least = massKg === null ? 0 : Math.round(generalMinimumGPerKg * massKg);
  const most = protein.length === 0 ? Infinity : Math.round(Math.max(...protein.map(({ highG }) => highG)));
  const atMeal = Math.round(proteinLowG / meals);
  const mealMost = meal === null ? Infinity : Math.round(meal.highG);
  const surplusMost = energy?.surplusHighKcal ?? Infinity;
  return [
    ...asked(massKg === null, 'Body mass is not on record, so these grams were held against nothing.'),
    ...asked(
      proteinLowG < least,
      `${proteinLowG} g is under the general minimum of ${least} g for this body mass.`,
    ),
    ...asked(
      proteinHighG > most,
      `${proteinHighG} g is over every figure worked out here; the highest is ${most} g.`,
    ),
    ...asked(atMeal > mealMost, `${atMeal} g at one meal is over the ${mealMost} g worked out for one.`),
    ...asked(
      (surplusKcal ?? 0) > surplusMost,
      `${surplusKcal} kcal over what is needed is over the ${surplusMost} kcal of the clinic for this patient.`,
    ),
  ];
};
