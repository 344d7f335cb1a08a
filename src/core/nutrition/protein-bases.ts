/**
 * The published and customary protein figures, in grams per kg a day, by basis.
 *
 * They conflict: the customary lean-mass range starts under the general minimum, the figures for older
 * adults lie between that minimum and the sports range, and kidney disease turns all of them around.
 */
import type { Citation } from '../sources/citation.ts';

export interface ProteinBasis {
  readonly per: 'body-mass' | 'lean-mass';
  readonly lowGPerKg: number;
  readonly highGPerKg: number;
}

export const bodyBases = {
  'body-isn-sports': { per: 'body-mass', lowGPerKg: 1.4, highGPerKg: 2 },
  'body-older': { per: 'body-mass', lowGPerKg: 1, highGPerKg: 1.2 },
  'body-older-unwell': { per: 'body-mass', lowGPerKg: 1.2, highGPerKg: 1.5 },
} as const satisfies Record<string, ProteinBasis>;

/** The general minimum for adults, and the age above which the older adults' figures were made. */
export const generalMinimumGPerKg = 0.8;
export const olderThanYears = 65;

export const basisCitations: readonly Citation[] = [
  {
    source: 'lean-protein-practice',
    locator: '1 to 2.5 g per kg lean mass',
    mark: 'common-practice',
    remark: 'No source. For 70 kg with 30 % fat the low end is 49 g, under the general minimum of 56 g.',
  },
  { source: 'jager-2017', locator: '1.4 to 2.0 g per kg body mass', mark: 'seen' },
  { source: 'bauer-2013', locator: 'over 65 years: 1.0 to 1.2 g per kg', mark: 'seen' },
  {
    source: 'deutz-2014',
    locator: 'older adults 1.0 to 1.2; ill or at risk 1.2 to 1.5 g per kg',
    mark: 'seen',
  },
  { source: 'protein-allowance', locator: '0.8 g per kg body mass', mark: 'second-hand' },
];
