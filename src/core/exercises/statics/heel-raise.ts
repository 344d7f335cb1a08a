/**
 * Ankle moment and load of a heel raise, from the lever between the ankle and the ball of the foot.
 *
 * Two legs share the weight evenly, which is an assumption: people with a sore leg lean off it. Added
 * weight is carried in the hands. No measurement was found to compare.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { ballOfFootShare } from '../body/body-lengths.ts';
import { addedField, massField, statureField } from '../body/fields.ts';
import { gravity } from '../body/gravity.ts';

export interface HeelRaise {
  readonly massKg: number;
  readonly statureM: number;
  readonly legs: 'two' | 'one';
  readonly addedKg: number;
}

export const heelRaise = (raise: HeelRaise): { effectiveLoadKg: number; ankleMomentNm: number } => {
  const legs = raise.legs === 'two' ? 2 : 1;
  const effectiveLoadKg = (raise.massKg + raise.addedKg) / legs;
  return { effectiveLoadKg, ankleMomentNm: effectiveLoadKg * gravity * ballOfFootShare * raise.statureM };
};

const heelRaiseCitations: readonly Citation[] = [
  {
    source: 'drillis-contini-1966',
    locator: 'foot length 0.152 of stature',
    mark: 'seen',
    remark: 'That the ball lies 0.45 of foot length in front of the ankle is an assumption.',
  },
];

export const heelRaiseRow = calculation({
  id: 'heel-raise-moment',
  title: 'Load and ankle moment of a heel raise',
  area: 'variation',
  input: [massField, statureField, { name: 'legs', kind: 'enum', values: ['two', 'one'] }, addedField],
  result: [
    { name: 'effectiveLoadKg', unit: 'kg', about: 'Per working leg.' },
    { name: 'ankleMomentNm', unit: 'N.m', about: 'Per working leg.' },
  ],
  citations: heelRaiseCitations,
  calculate: (input) =>
    answer(heelRaise(input), [
      {
        code: 'no-measurement',
        text: 'No measurement found to compare the model with. Two legs are taken to share evenly.',
      },
    ]),
  example: { massKg: 80, statureM: 1.75, legs: 'two', addedKg: 0 },
});
