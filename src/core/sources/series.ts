/** Where charts, trend tests, overlap and load pictures come from. How each was seen stands with each citation. */
import type { Source } from './source.ts';

export const seriesSources = {
  'nist-ewma': {
    authors: 'NIST/SEMATECH',
    year: null,
    title: 'e-Handbook of Statistical Methods, 6.3.2.4 EWMA control charts',
    identifier: 'itl.nist.gov/div898/handbook/pmc/section3/pmc324.htm',
    kind: 'handbook',
  },
  'nist-cusum': {
    authors: 'NIST/SEMATECH',
    year: null,
    title: 'e-Handbook of Statistical Methods, 6.3.2.3 CUSUM control charts',
    identifier: 'itl.nist.gov/div898/handbook/pmc/section3/pmc323.htm',
    kind: 'handbook',
  },
  montgomery: {
    authors: 'Montgomery',
    year: null,
    title: 'Introduction to statistical quality control: CUSUM and EWMA example of 30 values',
    kind: 'handbook',
  },
  'spc-package': {
    authors: 'Knoth',
    year: null,
    title: 'spc 0.6.7, a package for R: run lengths of control charts by integral equations',
    kind: 'dataset',
  },
  'mann-kendall-by-hand': {
    authors: 'College of the Holy Cross, mathematics',
    year: null,
    title: 'Mann-Kendall test by hand, 14 values',
    kind: 'handbook',
  },
  'theil-sen': {
    authors: 'Theil; Sen',
    year: 1968,
    title: 'Median of the slopes of all pairs',
    kind: 'study',
  },
  'parker-vannest-2009': {
    authors: 'Parker, Vannest',
    year: 2009,
    title: 'An improved effect size for single-case research: nonoverlap of all pairs',
    container: 'Behav Ther 40:357-367',
    kind: 'study',
  },
  'parker-2011-review': {
    authors: 'Parker, Vannest, Davis',
    year: 2011,
    title: 'Effect size in single-case research: a review of nine nonoverlap techniques',
    container: 'Behav Modif 35:303-322',
    kind: 'review',
  },
  'parker-2011-tau-u': {
    authors: 'Parker, Vannest, Davis, Sauber',
    year: 2011,
    title: 'Combining nonoverlap and trend for single-case research: Tau-U',
    container: 'Behav Ther 42:284-299',
    identifier: '10.1016/j.beth.2010.08.006',
    kind: 'study',
  },
  'lag-correlation': {
    authors: 'Time-series practice',
    year: null,
    title: 'Cross-correlation at a lag, its null band, and effective number of pairs under autocorrelation',
    kind: 'handbook',
  },
  'williams-2017': {
    authors: 'Williams, West, Cross, Stokes',
    year: 2017,
    title: 'Better way to determine the acute:chronic workload ratio?',
    container: 'Br J Sports Med 51(3):209',
    identifier: '10.1136/bjsports-2016-096589',
    kind: 'study',
  },
  'impellizzeri-2021': {
    authors: 'Impellizzeri and others',
    year: 2021,
    title: 'What role do chronic workloads play in the acute to chronic workload ratio?',
    container: 'Sports Med',
    identifier: '10.1007/s40279-020-01378-6',
    kind: 'study',
  },
} satisfies Record<string, Source>;
