/**
 * The limits of occlusion work with resistance, each with its source. Conflicts stand beside the value used.
 *
 * The tables of the position stand were remembered, not seen; two of its rows agree with second-hand
 * restatements. None of these limits was tested against harm: they describe what was used in trials.
 */

import type { Limb } from '#core/exercises/joints.ts';
import type { Citation } from '#core/sources/citation.ts';

interface Limit<V> {
  readonly value: V;
  readonly unit: string;
  readonly citation: Citation;
  /** Other published figures, with which is used and why. */
  readonly conflict?: string;
}

const stand = (locator: string, remark?: string): Citation => ({
  source: 'occlusion-position-stand-2019',
  locator,
  mark: 'memory',
  remark,
});

export const percentOfOcclusionPressure: Limit<{ readonly low: number; readonly high: number }> = {
  value: { low: 40, high: 80 },
  unit: '%',
  citation: stand('resistance table: pressure', 'agrees with restatements'),
};

export const passivePercent: Limit<{ readonly low: number; readonly high: number }> = {
  value: { low: 70, high: 100 },
  unit: '%',
  citation: stand('passive table: pressure'),
  conflict: 'A maker advises against full occlusion; a clinician reviews every passive target.',
};

export const percentOfOneRepMax: Limit<{ readonly low: number; readonly high: number }> = {
  value: { low: 20, high: 40 },
  unit: '%',
  citation: stand('resistance table: load', 'agrees with restatements'),
  conflict: 'A maker states 20-50 %; the narrower range is used.',
};

export const exerciseCapSeconds: Limit<number> = {
  value: 600,
  unit: 's',
  citation: stand('resistance table: restriction time 5-10 min per exercise'),
};

export const usualExerciseSeconds: Limit<number> = {
  value: 300,
  unit: 's',
  citation: stand('resistance table: restriction time 5-10 min per exercise'),
};

/** The whole session must stay under these, exclusive. */
export const sessionCapSeconds: Readonly<Record<Limb, Limit<number>>> = {
  leg: {
    value: 1200,
    unit: 's',
    citation: {
      source: 'occlusion-makers-guides',
      locator: 'support page: leg under 20 min',
      mark: 'second-hand',
    },
    conflict: 'Another maker states under 15 min for any continuous cuff.',
  },
  arm: {
    value: 900,
    unit: 's',
    citation: {
      source: 'occlusion-makers-guides',
      locator: 'support page: arm under 15 min',
      mark: 'second-hand',
    },
  },
};

export const reperfusionSeconds: Limit<{ readonly betweenExercises: number; readonly afterBlock: number }> = {
  value: { betweenExercises: 60, afterBlock: 180 },
  unit: 's',
  citation: { source: 'occlusion-makers-guides', locator: 'both guides', mark: 'design' },
  conflict: 'More than 1 min between exercises (one guide), 3 min after a block (the other): both are kept.',
};

export const sessionsPerWeek: Limit<{ readonly low: number; readonly high: number }> = {
  value: { low: 2, high: 3 },
  unit: '/wk',
  citation: stand('resistance table: frequency, more than 3 weeks'),
  conflict: 'Once or twice a day for 1-3 weeks is also described; it is not offered here.',
};

export const secondsPerRepetitionRange: Limit<{ readonly low: number; readonly high: number }> = {
  value: { low: 2, high: 6 },
  unit: 's',
  citation: stand(
    'resistance table: 1-2 s up, 1-2 s down',
    'trials used up to 5 s; 6 s leaves room for a pause',
  ),
};
