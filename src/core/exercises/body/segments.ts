/**
 * Body segments by sex: mass as a share of body mass (one side for limbs), centre of mass as a share
 * of segment length from the upper end, and length.
 *
 * Young adults, measured by gamma scanning and re-referenced to joint centres by de Leva. Lengths are
 * those of the sample and are scaled by stature; nobody's own segments are measured. Not made for
 * people with an amputation, marked oedema or a large change of shape.
 */
import type { Citation } from '#core/sources/citation.ts';

export type Sex = 'female' | 'male';

export interface Segment {
  readonly massShare: number;
  readonly centreShare: number;
  readonly lengthMm: number;
}

export const segmentCitations: readonly Citation[] = [
  {
    source: 'de-leva-1996',
    locator: 'table of adjusted parameters, masses and centres of mass',
    mark: 'seen',
    remark: 'Read in a stored data file of the table; lengths in a second data file.',
  },
  {
    source: 'de-leva-1996',
    locator: 'mean stature of the women, 1.735 m',
    mark: 'memory',
    remark: 'The stature by which the lengths of the women are scaled was remembered, not read.',
  },
];

/** Mean stature of the sample in millimetres, by which its lengths are scaled. */
export const sampleStatureMm = { male: 1741, female: 1735 } as const;

export const segments = {
  male: {
    headAndNeck: { massShare: 0.0694, centreShare: 0.5002, lengthMm: 242.9 },
    trunk: { massShare: 0.4346, centreShare: 0.431, lengthMm: 515.5 },
    upperArm: { massShare: 0.0271, centreShare: 0.5772, lengthMm: 281.7 },
    forearm: { massShare: 0.0162, centreShare: 0.4574, lengthMm: 268.9 },
    hand: { massShare: 0.0061, centreShare: 0.3624, lengthMm: 187.9 },
    thigh: { massShare: 0.1416, centreShare: 0.4095, lengthMm: 422.2 },
    shank: { massShare: 0.0433, centreShare: 0.4395, lengthMm: 440.3 },
    foot: { massShare: 0.0137, centreShare: 0.4415, lengthMm: 258.1 },
  },
  female: {
    headAndNeck: { massShare: 0.0668, centreShare: 0.4841, lengthMm: 243.7 },
    trunk: { massShare: 0.4257, centreShare: 0.3782, lengthMm: 497.9 },
    upperArm: { massShare: 0.0255, centreShare: 0.5754, lengthMm: 275.1 },
    forearm: { massShare: 0.0138, centreShare: 0.4559, lengthMm: 264.3 },
    hand: { massShare: 0.0056, centreShare: 0.3427, lengthMm: 170.1 },
    thigh: { massShare: 0.1478, centreShare: 0.3612, lengthMm: 368.5 },
    shank: { massShare: 0.0481, centreShare: 0.4352, lengthMm: 438.6 },
    foot: { massShare: 0.0129, centreShare: 0.4014, lengthMm: 228.3 },
  },
} as const satisfies Record<Sex, Record<string, Segment>>;

/** Mid-shoulder is this far below the seventh neck vertebra: the two trunk lengths of the table, subtracted. */
export const neckBaseAboveShoulderMm = { male: 603.3 - 515.5, female: 614.8 - 497.9 } as const;

export type SegmentName = keyof (typeof segments)['male'];

/** Length of a segment as a share of stature. */
export const lengthShare = (name: SegmentName, sex: Sex): number =>
  segments[sex][name].lengthMm / sampleStatureMm[sex];
