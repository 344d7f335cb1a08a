/** Accuracy of repetition-based estimates as a whole, cited by every row that gives one. */
import type { Citation } from '#core/sources/citation.ts';

export const accuracyCitations: readonly Citation[] = [
  {
    source: 'knutzen-1999',
    locator: 'abstract',
    mark: 'seen',
    remark:
      '51 adults of 70.7 ± 6.1 years, 11 machine lifts, 7–10 repetitions: r .77–.90 upper and .60–.80 lower limb; all six equations too low, within 1–10 kg.',
  },
  {
    source: 'hutchins-2010',
    locator: 'translated abstract',
    mark: 'seen',
    remark: 'Young men at 85 %: error 5.3–6.9 kg, total error 10.6–13.5 % of the mean.',
  },
  {
    source: 'mayhew-2008',
    locator: 'abstract',
    mark: 'seen',
    remark:
      '103 young women: repetitions at the same percentage changed by 27 ± 99 % over 12 weeks, so a change in one person is noisy.',
  },
];
