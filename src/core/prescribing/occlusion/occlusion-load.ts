/**
 * Load of occlusion work: 20-40 % of the one-repetition maximum, and when to raise it.
 *
 * Without a known maximum a load can be dosed by effort alone, and that is said. The step rule is
 * one trial's: raise by the smallest possible load when the fourth set passes 15 repetitions.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import { percentOfOneRepMax } from './limits.ts';
import type { WorkingLine } from './occlusion-request.ts';

export const loadWithinShare = (loadKg: number, oneRepMaxKg: number | null): Outcome<WorkingLine> => {
  if (!(loadKg >= 0) || loadKg === Number.POSITIVE_INFINITY) {
    return refuse('request.loadKg', 'too-low', 'Give the load in kilograms, 0 or more.');
  }
  const { low, high } = percentOfOneRepMax.value;
  if (oneRepMaxKg === null) {
    return answer(
      { text: `${loadKg} kg by effort alone; no one-repetition maximum is known.`, support: 'clinic' },
      [
        {
          code: 'maximum-not-known',
          text: `Whether this lies in ${low}-${high} % of the maximum is not known.`,
        },
      ],
    );
  }
  if (!(oneRepMaxKg > 0))
    return refuse('request.oneRepMaxKg', 'too-low', 'The maximum is more than 0 kg, or not known.');
  // Compared as products, so that a load rounded to exactly the bound is not refused by a stray digit.
  const bounds = { low: (oneRepMaxKg * low) / 100, high: (oneRepMaxKg * high) / 100 };
  const slack = 1e-9 * oneRepMaxKg;
  const share = (100 * loadKg) / oneRepMaxKg;
  if (loadKg > bounds.high + slack) {
    return refuse(
      'request.loadKg',
      'too-high',
      `${loadKg} kg is ${share.toFixed(1)} % of the maximum; at most ${high} %.`,
    );
  }
  const line = {
    text: `${loadKg} kg is ${share.toFixed(1)} % of an estimated maximum of ${oneRepMaxKg.toFixed(1)} kg, within ${low}-${high} %.`,
    support: percentOfOneRepMax.citation.source,
  };
  if (loadKg >= bounds.low - slack) return answer(line);
  return answer({ ...line, text: line.text.replace('within', 'under') }, [
    { code: 'under-range', text: `Under ${low} % of the maximum: lighter than the trials used.` },
  ]);
};

export const occlusionLoad = calculation({
  id: 'occlusion-load',
  title: 'Load for occlusion work from the one-repetition maximum',
  area: 'occlusion',
  input: [
    { name: 'oneRepMaxKg', kind: 'number', unit: 'kg', min: 0, exclusiveMin: true, max: 1000 },
    {
      name: 'percent',
      kind: 'number',
      unit: '%',
      min: percentOfOneRepMax.value.low,
      max: percentOfOneRepMax.value.high,
    },
  ],
  result: [{ name: 'loadKg', unit: 'kg', about: 'unrounded; round to what the patient owns, never above' }],
  citations: [
    percentOfOneRepMax.citation,
    { source: 'occlusion-makers-guides', locator: 'support page: 20-40 % 1RM', mark: 'second-hand' },
  ],
  calculate: ({ oneRepMaxKg, percent }) => answer({ loadKg: (oneRepMaxKg * percent) / 100 }),
  example: { oneRepMaxKg: 40, percent: 30 },
});

const stepAboveRepetitions = 15;

export const occlusionLoadStep = calculation({
  id: 'occlusion-load-step',
  title: 'Is a load step due after the fourth set',
  area: 'occlusion',
  input: [{ name: 'fourthSetRepetitions', kind: 'integer', unit: '{rep}', min: 0, max: 200 }],
  result: [{ name: 'smallestStepDue', unit: '' }],
  citations: [
    {
      source: 'occlusion-trial-table-3',
      locator: 'table 3: progression',
      mark: 'seen',
      remark: 'more than 15, strictly',
    },
  ],
  calculate: ({ fourthSetRepetitions }) =>
    answer({ smallestStepDue: fourthSetRepetitions > stepAboveRepetitions }, [
      {
        code: 'joint-decides',
        text: 'A finding of the sets alone: the joint and a clinician decide whether a step is taken.',
      },
    ]),
  example: { fourthSetRepetitions: 16 },
});
