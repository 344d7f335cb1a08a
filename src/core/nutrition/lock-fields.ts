/** The questions that can lock a nutrition target. Left out means not asked, and the answer says so. */
import type { EnumField, Field, InputOf, NumberField } from '../calculations/describe.ts';

const threeValued = <const N extends string>(name: N, about: string) =>
  ({
    name,
    kind: 'enum',
    values: ['yes', 'no', 'not-known'],
    optional: true,
    about,
  }) as const satisfies EnumField;

export const egfrField = {
  name: 'egfr',
  kind: 'number',
  unit: 'mL/min/{1.73_m2}',
  min: 1,
  max: 200,
  optional: true,
} as const satisfies NumberField;

export const kidneyQuestions = [
  threeValued('kidneyDisease', 'Known kidney disease.'),
  threeValued('singleKidney', 'One kidney only.'),
  threeValued('dialysis', 'On dialysis.'),
] as const satisfies readonly Field[];

const otherLockQuestions = [
  threeValued(
    'eatingOrWeightWorry',
    'Weight lost without trying, or eating or weight has become a struggle.',
  ),
  threeValued('pregnancy', 'Pregnant, possibly pregnant or lately given birth.'),
] as const satisfies readonly Field[];

export const lockQuestions = [...kidneyQuestions, ...otherLockQuestions] as const satisfies readonly Field[];
export type LockAnswers = InputOf<typeof lockQuestions>;
export type LockQuestion = keyof LockAnswers;

/** "Not known" routes like "yes"; only a plain "no", or a question not asked here, does not lock. */
export const locks = (given: 'yes' | 'no' | 'not-known' | undefined): boolean =>
  given === 'yes' || given === 'not-known';
