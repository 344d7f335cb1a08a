/**
 * The smallest fall that three in four improved people with knee or hip osteoarthritis had.
 *
 * All figures are from memory, on 0 to 100 scales. Importance is not error: a fall this large can still be
 * within the error of measuring.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { exceeds } from './change-beyond-error.ts';

const smallestFall = {
  knee: { pain: 19.9, 'patient-global': 18.3, function: 9.1 },
  hip: { pain: 15.3, 'patient-global': 15.2, function: 7.9 },
} as const;

export const minimalImprovementRow = calculation({
  id: 'minimal-improvement',
  title: 'Smallest important improvement in knee or hip osteoarthritis',
  area: 'outcomes',
  input: [
    { name: 'joint', kind: 'enum', values: ['knee', 'hip'] },
    { name: 'measure', kind: 'enum', values: ['pain', 'patient-global', 'function'] },
    { name: 'before', kind: 'number', unit: '{score}', min: 0, max: 100 },
    { name: 'after', kind: 'number', unit: '{score}', min: 0, max: 100 },
  ],
  result: units({ fall: '{score}', important: '', threshold: '{score}' }),
  citations: [
    {
      source: 'tubach-2005-mcii',
      locator: 'pain, patient global and function, knee and hip',
      mark: 'memory',
    },
  ],
  calculate: (input) => {
    const threshold = smallestFall[input.joint][input.measure];
    const fall = input.before - input.after;
    return answer({ fall, important: !exceeds(threshold, fall), threshold }, [
      {
        code: 'from-memory',
        text: 'These figures are from memory. An important fall can still be within error.',
      },
    ]);
  },
  example: { joint: 'knee', measure: 'pain', before: 60, after: 40 },
});
