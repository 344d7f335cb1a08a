/**
 * The symptom level that three in four satisfied people with knee or hip osteoarthritis lay under.
 *
 * From 1,362 people after four weeks, on 0 to 100 scales. A level at or under the figure is acceptable to most,
 * which does not make it acceptable to this person: ask.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';

const acceptableUpTo = {
  knee: { pain: 32.3, 'patient-global': 32, function: 31 },
  hip: { pain: 35, 'patient-global': 34.6, function: 34.4 },
} as const;

export const acceptableSymptomStateRow = calculation({
  id: 'acceptable-symptom-state',
  title: 'Acceptable symptom state in knee or hip osteoarthritis',
  area: 'outcomes',
  input: [
    { name: 'joint', kind: 'enum', values: ['knee', 'hip'] },
    { name: 'measure', kind: 'enum', values: ['pain', 'patient-global', 'function'] },
    {
      name: 'value',
      kind: 'number',
      unit: '{score}',
      min: 0,
      max: 100,
      about: '0 to 100; millimetres for pain',
    },
  ],
  result: units({ acceptable: '', threshold: '{score}' }),
  citations: [
    {
      source: 'tubach-2005-pass',
      locator: '75th percentile of satisfied patients, knee and hip',
      mark: 'seen',
    },
  ],
  calculate: (input) => {
    const threshold = acceptableUpTo[input.joint][input.measure];
    return answer({ acceptable: input.value <= threshold, threshold });
  },
  example: { joint: 'knee', measure: 'pain', value: 32.3 },
});
