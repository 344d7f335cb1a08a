/**
 * The number of stands in 30 seconds with which people with hip osteoarthritis called their state acceptable.
 *
 * At least 11 after nine weeks and 12 after a year, in one study of the hip. Not for other joints.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';

const acceptableFrom = { '9-weeks': 11, '1-year': 12 } as const;

export const chairStandHipStateRow = calculation({
  id: 'chair-stand-hip-state',
  title: 'Acceptable chair stand in hip osteoarthritis',
  area: 'outcomes',
  input: [
    { name: 'after', kind: 'enum', values: ['9-weeks', '1-year'] },
    { name: 'stands', kind: 'integer', unit: '{stand}', min: 0, max: 60 },
  ],
  result: units({ acceptable: '', threshold: '{stand}' }),
  citations: [
    {
      source: 'chair-stand-hip-2013',
      locator: 'abstract: 11 stands at 9 weeks, 12 at one year',
      mark: 'seen',
    },
  ],
  calculate: (input) => {
    const threshold = acceptableFrom[input.after];
    return answer({ acceptable: input.stands >= threshold, threshold });
  },
  example: { after: '9-weeks', stands: 11 },
});
