/**
 * Why a long set to failure gives no one-repetition maximum. At 20–50 % of the maximum a set runs to
 * 25 repetitions and more, beyond every equation: some have a pole (37 and 37.9 repetitions), some a
 * floor they cannot pass under (52.2, 48.8 and 65.6 %), one would need 169,351 repetitions at 30 %.
 * The eight disagree by 9 % at 8 repetitions, 57 % at 20 and 266 % at 30. Follow such a set by load,
 * repetitions and reserve instead.
 */
import type { Note } from '#core/outcome.ts';

/** Longest set any of the equations is shown for. */
export const longestSetForEstimate = 20;

export const noEstimateFromLongSets: Note = {
  code: 'no-maximum-from-long-sets',
  text: 'No published equation holds for sets longer than 20 repetitions, so no one-repetition maximum is given. Follow load, repetitions and repetitions in reserve, or test with a heavier load that fails within 3–20 repetitions if the joint allows it.',
};

export const estimateNotMeasured: Note = {
  code: 'estimate-not-measurement',
  text: 'An estimate, not a measured maximum. In 51 older adults six equations all read too low, by 1–10 kg (Knutzen 1999); in 103 young women the repetitions done at the same percentage changed by 27 ± 99 % over twelve weeks (Mayhew 2008). No equation was tested in painful joints.',
};
