/**
 * Five times sit-to-stand: 13.6 s or more as mobility risk, more than 15 s as low strength.
 *
 * Two cuts from two sources; pain on rising slows the test without any loss of strength.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';

const riskFromSeconds = 13.6;
const lowStrengthAboveSeconds = 15;

export const fiveTimesSitToStandRow = calculation({
  id: 'five-times-sit-to-stand',
  title: 'Five times sit-to-stand',
  area: 'outcomes',
  input: [{ name: 'seconds', kind: 'number', unit: 's', min: 2, max: 300 }],
  result: units({ mobilityRisk: '', lowStrength: '' }),
  citations: [
    { source: 'five-stands-risk', locator: '13.6 seconds', mark: 'second-hand' },
    { source: 'ewgsop2-2019', locator: 'low strength: more than 15 seconds', mark: 'seen' },
  ],
  calculate: (input) =>
    answer({
      mobilityRisk: input.seconds >= riskFromSeconds,
      lowStrength: input.seconds > lowStrengthAboveSeconds,
    }),
  example: { seconds: 14.2 },
});
