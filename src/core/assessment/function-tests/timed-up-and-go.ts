/**
 * Timed up and go: 12 seconds or more as a fall-risk cut, 20 or more as severely low performance.
 *
 * The 12-second cut is from memory; published cuts range widely. A time under it does not rule out falls.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';

const fallRiskFromSeconds = 12;
const severeFromSeconds = 20;

export const timedUpAndGoRow = calculation({
  id: 'timed-up-and-go',
  title: 'Timed up and go',
  area: 'outcomes',
  input: [{ name: 'seconds', kind: 'number', unit: 's', min: 2, max: 300 }],
  result: units({ fallRisk: '', severelyLow: '' }),
  citations: [
    { source: 'fall-toolkit', locator: '12 seconds', mark: 'memory' },
    { source: 'ewgsop2-2019', locator: 'severity: 20 seconds', mark: 'seen' },
  ],
  calculate: (input) =>
    answer(
      { fallRisk: input.seconds >= fallRiskFromSeconds, severelyLow: input.seconds >= severeFromSeconds },
      [
        {
          code: 'from-memory',
          text: 'The cut of 12 seconds is from memory. A shorter time does not rule out falls.',
        },
      ],
    ),
  example: { seconds: 12.4 },
});
