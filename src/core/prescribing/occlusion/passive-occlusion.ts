/**
 * Occlusion without exercise, for rest in bed or a cast: bouts of 5 min, 3 to 5 of them, 3-5 min apart.
 *
 * From memory of the position stand's passive table; a maker advises against full occlusion. Every
 * passive target is for a clinician's review and is never prescribed for home here.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { passivePercent } from './limits.ts';

export const passiveOcclusion = calculation({
  id: 'passive-occlusion',
  title: 'Passive occlusion: pressure and time',
  area: 'occlusion',
  input: [
    { name: 'limbOcclusionPressureMmhg', kind: 'number', unit: 'mm[Hg]', min: 50, max: 500 },
    {
      name: 'percent',
      kind: 'number',
      unit: '%',
      min: passivePercent.value.low,
      max: passivePercent.value.high,
    },
    { name: 'bouts', kind: 'integer', unit: '1', min: 3, max: 5 },
    { name: 'boutMinutes', kind: 'number', unit: 'min', min: 0, exclusiveMin: true, max: 5 },
    { name: 'restMinutes', kind: 'number', unit: 'min', min: 3, max: 5 },
  ],
  result: units({ pressureMmhg: 'mm[Hg]', occludedMinutes: 'min', elapsedMinutes: 'min' }),
  citations: [
    passivePercent.citation,
    {
      source: 'occlusion-makers-guides',
      locator: 'support page: passive 5 min, no full occlusion',
      mark: 'second-hand',
    },
  ],
  calculate: ({ limbOcclusionPressureMmhg, percent, bouts, boutMinutes, restMinutes }) =>
    answer(
      {
        pressureMmhg: (limbOcclusionPressureMmhg * percent) / 100,
        occludedMinutes: bouts * boutMinutes,
        elapsedMinutes: bouts * boutMinutes + (bouts - 1) * restMinutes,
      },
      [
        { code: 'clinician-review', text: 'For a clinician to review and to stand beside; not for home.' },
        {
          code: 'from-memory',
          text: 'From memory of the position stand; a maker advises against full occlusion.',
        },
      ],
    ),
  example: { limbOcclusionPressureMmhg: 180, percent: 70, bouts: 5, boutMinutes: 5, restMinutes: 5 },
});
