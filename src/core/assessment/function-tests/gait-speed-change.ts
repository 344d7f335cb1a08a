/**
 * Change of gait speed against what older adults found meaningful: 0.05 m/s small, 0.10 m/s substantial.
 *
 * Both figures are from memory. No measurement error was found, so this row never says that a change is
 * beyond error: measure locally and use the detectable change from pairs.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { exceeds } from '../change/change-beyond-error.ts';

const meaningfulMPerS = { small: 0.05, substantial: 0.1 } as const;

const size = (change: number): 'under-small' | 'small' | 'substantial' => {
  if (!exceeds(meaningfulMPerS.substantial, Math.abs(change))) return 'substantial';
  return exceeds(meaningfulMPerS.small, Math.abs(change)) ? 'under-small' : 'small';
};

export const gaitSpeedChangeRow = calculation({
  id: 'gait-speed-change',
  title: 'Size of a change of gait speed',
  area: 'outcomes',
  input: [
    { name: 'beforeMPerS', kind: 'number', unit: 'm/s', min: 0, max: 5 },
    { name: 'afterMPerS', kind: 'number', unit: 'm/s', min: 0, max: 5 },
  ],
  result: [
    { name: 'changeMPerS', unit: 'm/s' },
    { name: 'size', unit: '', about: 'under-small, small or substantial' },
  ],
  citations: [{ source: 'perera-2006', locator: '0.05 and 0.10 m/s', mark: 'memory' }],
  calculate: (input) => {
    const change = input.afterMPerS - input.beforeMPerS;
    return answer({ changeMPerS: change, size: size(change) }, [
      {
        code: 'no-error-figure',
        text: 'Figures from memory, and no measurement error was found: whether this is a change at all is not known.',
      },
    ]);
  },
  example: { beforeMPerS: 0.82, afterMPerS: 0.93 },
});
