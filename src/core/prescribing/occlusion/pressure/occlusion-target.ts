/**
 * Cuff pressure as a share of the measured limb occlusion pressure.
 *
 * 40-80 % with resistance exercise. The share of pressure is not the share of flow lost: grip work
 * at 60 and 80 % cut flow alike. Outside 40-80 % the row answers with a warning; at full occlusion
 * and above it refuses, because resistance work with no arterial flow is not what any source describes.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, refuse } from '#core/outcome.ts';
import { percentOfOcclusionPressure } from '../limits.ts';

/** Whole mmHg, never rounded up past the upper bound of the allowed share. */
export const wholeTargetMmhg = (limbOcclusionPressureMmhg: number, percent: number): number => {
  const rounded = Math.round((limbOcclusionPressureMmhg * percent) / 100);
  const ceiling = Math.floor((limbOcclusionPressureMmhg * percentOfOcclusionPressure.value.high) / 100);
  return percent <= percentOfOcclusionPressure.value.high ? Math.min(rounded, ceiling) : rounded;
};

const outsideRange: Note = {
  code: 'outside-range',
  text: `Outside the described ${percentOfOcclusionPressure.value.low}-${percentOfOcclusionPressure.value.high} % of limb occlusion pressure.`,
};

const measuredOnly: Note = {
  code: 'measured-on-this-limb',
  text: 'Holds for the limb, side, cuff width and position of the measurement only; an estimate gives an estimate.',
};

export const occlusionTarget = calculation({
  id: 'occlusion-target',
  title: 'Cuff pressure from limb occlusion pressure',
  area: 'occlusion',
  input: [
    {
      name: 'limbOcclusionPressureMmhg',
      kind: 'number',
      unit: 'mm[Hg]',
      min: 50,
      max: 500,
      about: 'Measured on this limb with this cuff in this position.',
    },
    { name: 'percent', kind: 'number', unit: '%', min: 0, exclusiveMin: true, max: 130 },
  ],
  result: [{ name: 'pressureMmhg', unit: 'mm[Hg]', about: 'unrounded' }],
  citations: [
    percentOfOcclusionPressure.citation,
    { source: 'occlusion-makers-guides', locator: 'pressure: 40-80 %', mark: 'second-hand' },
  ],
  calculate: ({ limbOcclusionPressureMmhg, percent }) => {
    if (percent >= 100) {
      return refuse(
        'percent',
        'too-high',
        'Resistance work is done under full occlusion pressure; use 40-80 %.',
      );
    }
    const { low, high } = percentOfOcclusionPressure.value;
    const notes = percent < low || percent > high ? [outsideRange, measuredOnly] : [measuredOnly];
    return answer({ pressureMmhg: (limbOcclusionPressureMmhg * percent) / 100 }, notes);
  },
  example: { limbOcclusionPressureMmhg: 180, percent: 60 },
});
