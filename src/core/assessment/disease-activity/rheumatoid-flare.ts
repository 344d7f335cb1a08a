/**
 * Flare of rheumatoid arthritis between two visits: DAS28 up by more than 1.2, or by more than 0.6 when it was
 * 3.2 or more.
 *
 * One of six published criteria; that this one validated best is from memory. Which of the two scores the 3.2
 * refers to is not stated where it was seen: it is taken at the earlier visit. Both scores must be of one form.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { exceeds } from '../change/change-beyond-error.ts';

const riseAlways = 1.2;
const riseWhenActive = { rise: 0.6, from: 3.2 } as const;

export const rheumatoidFlareRow = calculation({
  id: 'rheumatoid-flare',
  title: 'Flare of rheumatoid arthritis between two visits',
  area: 'outcomes',
  input: [
    { name: 'earlier', kind: 'number', unit: '{score}', min: 0, max: 12 },
    { name: 'later', kind: 'number', unit: '{score}', min: 0, max: 12 },
  ],
  result: [
    { name: 'flare', unit: '' },
    { name: 'rise', unit: '{score}' },
    { name: 'threshold', unit: '{score}', about: 'the rise that must be exceeded' },
  ],
  citations: [
    {
      source: 'van-der-maas-2013',
      locator: 'criterion 2 of six',
      mark: 'seen',
      remark: 'Reading the 3.2 at the earlier visit is this tool’s convention.',
    },
  ],
  calculate: (input) => {
    const rise = input.later - input.earlier;
    const active = !exceeds(riseWhenActive.from, input.earlier);
    const threshold = active ? riseWhenActive.rise : riseAlways;
    return answer({ flare: exceeds(rise, threshold), rise, threshold }, [
      { code: 'one-form', text: 'Both scores must be of the same form, ESR or CRP.' },
    ]);
  },
  example: { earlier: 3.3, later: 4 },
});
