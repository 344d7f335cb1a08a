/** Volume load per minute of session. Higher means more work in less time, not better work. */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';
import { workedTable } from './volume-load.ts';

export const sessionDensity = (input: {
  readonly volumeLoadKg: number;
  readonly minutes: number;
}): Outcome<{ readonly kgPerMinute: number }> => answer({ kgPerMinute: input.volumeLoadKg / input.minutes });

export const sessionDensityRow = calculation({
  id: 'session-density',
  title: 'Volume load per minute',
  area: 'strength',
  input: [
    { name: 'volumeLoadKg', kind: 'number', unit: 'kg', min: 0, max: 1_000_000 },
    { name: 'minutes', kind: 'number', unit: 'min', min: 1, max: 600 },
  ],
  result: [{ name: 'kgPerMinute', unit: 'kg/min' }],
  citations: [workedTable('density')],
  calculate: sessionDensity,
  example: { volumeLoadKg: 1560, minutes: 45 },
});
