/**
 * The protein intake beyond which trials found no further gain of fat-free mass.
 *
 * From 49 trials and 1,863 people (Morton 2018): 1.62 g per kg body mass, with a wide interval. The effect
 * was smaller with age. It is a point where gain stopped being seen, not a target.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';
import { massKg } from './body-fields.ts';

const breakPointGPerKg = { estimate: 1.62, low: 1.03, high: 2.2 } as const;

export const proteinPlateauRow = calculation({
  id: 'protein-plateau',
  title: 'Protein beyond which trials saw no further gain',
  area: 'nutrition',
  input: [massKg],
  result: [
    { name: 'plateauG', unit: 'g/d' },
    { name: 'lowG', unit: 'g/d', about: 'lower end of the 95 % interval' },
    { name: 'highG', unit: 'g/d', about: 'upper end of the 95 % interval' },
  ],
  citations: [
    {
      source: 'morton-2018',
      locator: 'break point 1.62 g/kg (95 % CI 1.03 to 2.20)',
      mark: 'seen',
      remark: 'The interval was read second-hand.',
    },
  ],
  calculate: (input) =>
    answer(
      {
        plateauG: breakPointGPerKg.estimate * input.massKg,
        lowG: breakPointGPerKg.low * input.massKg,
        highG: breakPointGPerKg.high * input.massKg,
      },
      [
        {
          code: 'not-a-target',
          text: 'Where gain stopped being seen on average; not a target for a person.',
        },
      ],
    ),
  example: { massKg: 70 },
});
