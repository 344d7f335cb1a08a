/** Repetition schemes seen in trials, restated, or common in practice. Data only; the clinician picks. */
import type { Citation } from '#core/sources/citation.ts';

export interface OcclusionScheme {
  readonly id: string;
  readonly title: string;
  /** Repetitions of each set; where a set goes to failure the number is its ceiling. */
  readonly repetitions: readonly number[];
  /** Fewest repetitions of a set, where the scheme is a band. */
  readonly fewest: number | null;
  readonly restSeconds: { readonly low: number; readonly high: number; readonly usual: number };
  readonly inflation: 'continuous' | 'intermittent';
  /** Most exercises of this scheme in one session; null = bounded by time alone. */
  readonly perSession: number | null;
  readonly citation: Citation;
}

export const occlusionSchemes = [
  {
    id: 'thirty-then-fifteens',
    title: '30, then three times 15',
    repetitions: [30, 15, 15, 15],
    fewest: null,
    restSeconds: { low: 30, high: 60, usual: 30 },
    inflation: 'continuous',
    perSession: null,
    citation: {
      source: 'occlusion-position-stand-2019',
      locator: 'resistance table: 75 repetitions',
      mark: 'memory',
      remark: 'agrees with a restatement; used in trials after ligament and cartilage surgery',
    },
  },
  {
    id: 'thirty-fifteens-last-to-failure',
    title: '30, 15, 15, then to failure, at most 30',
    repetitions: [30, 15, 15, 30],
    fewest: null,
    restSeconds: { low: 30, high: 45, usual: 45 },
    inflation: 'continuous',
    perSession: null,
    citation: { source: 'cartilage-protocol-2022', locator: 'table 1, first six weeks', mark: 'seen' },
  },
  {
    id: 'four-fifteens',
    title: 'Four times 15',
    repetitions: [15, 15, 15, 15],
    fewest: null,
    restSeconds: { low: 30, high: 60, usual: 30 },
    inflation: 'continuous',
    perSession: null,
    citation: {
      source: 'rheumatoid-occlusion-trial-2020',
      locator: 'news page: 4 x 15 at 30 %, twice weekly; rest not seen',
      mark: 'second-hand',
    },
  },
  {
    id: 'fifteens-deflated',
    title: 'Up to 15 a set, cuff down in the rests',
    repetitions: [15, 15, 15],
    fewest: null,
    restSeconds: { low: 60, high: 60, usual: 60 },
    inflation: 'intermittent',
    perSession: null,
    citation: {
      source: 'knee-arthritis-protocol-2022',
      locator: 'table 1; the number of sets was not seen, three is used',
      mark: 'seen',
    },
  },
  {
    id: 'three-short-rests',
    title: 'Three times 10 to 15 with 15 s rest, once a session',
    repetitions: [15, 15, 15],
    fewest: 10,
    restSeconds: { low: 15, high: 15, usual: 15 },
    inflation: 'continuous',
    perSession: 1,
    citation: {
      source: 'occlusion-position-stand-2019',
      locator: 'not from the stand: common practice, no source; its rests are 30-60 s',
      mark: 'common-practice',
    },
  },
] as const satisfies readonly OcclusionScheme[];

export const occlusionScheme = (id: string): OcclusionScheme | null =>
  occlusionSchemes.find((scheme) => scheme.id === id) ?? null;
