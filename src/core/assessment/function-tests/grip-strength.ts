/**
 * Grip strength against the sarcopenia consensus of 2019: under 27 kg in men, under 16 kg in women.
 *
 * A painful or deformed hand lowers grip by itself, so in hand arthritis a low grip says little about the rest
 * of the body.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';

const lowUnderKg = { male: 27, female: 16 } as const;

export const gripStrengthRow = calculation({
  id: 'grip-strength',
  title: 'Grip strength',
  area: 'outcomes',
  input: [
    { name: 'sex', kind: 'enum', values: ['female', 'male'] },
    { name: 'forceKg', kind: 'number', unit: 'kg', min: 0, max: 120 },
  ],
  result: units({ low: '', thresholdKg: 'kg' }),
  citations: [{ source: 'ewgsop2-2019', locator: 'cut-offs for low strength by grip', mark: 'seen' }],
  calculate: (input) => {
    const thresholdKg = lowUnderKg[input.sex];
    return answer({ low: input.forceKg < thresholdKg, thresholdKg }, [
      { code: 'painful-hand', text: 'A painful or deformed hand lowers grip by itself.' },
    ]);
  },
  example: { sex: 'female', forceKg: 15.9 },
});
