/**
 * Share of body weight pulled in a suspended lean-back row with straight arms, by body angle.
 *
 * Measured in forty people at four angles from the vertical, feet under the anchor. Between angles the
 * table is read on a straight line; outside 30–75° nothing is returned. Older people were not in it.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { radians } from '../body/gravity.ts';
import { interpolate } from '../body/interpolate.ts';

export const leanBackRowCitations: readonly Citation[] = [
  {
    source: 'melrose-dawes-2015',
    locator: 'abstract: four angles from the vertical, percent of body mass',
    mark: 'seen',
    remark: 'Straight arms, held still. The straight line between angles is our reading.',
  },
];

const leanBackRowMeasured = [
  { fromVerticalDeg: 30, share: 0.3744 },
  { fromVerticalDeg: 45, share: 0.5288 },
  { fromVerticalDeg: 60, share: 0.6808 },
  { fromVerticalDeg: 75, share: 0.7938 },
] as const;

export const leanBackRowShare = (fromVerticalDeg: number): number | null =>
  interpolate(
    leanBackRowMeasured.map((row) => [row.fromVerticalDeg, row.share] as const),
    fromVerticalDeg,
  );

/** One-constant fit to the four points, shown beside them and used for nothing. */
export const leanBackRowFit = (fromVerticalDeg: number): number => 0.788 * Math.sin(radians(fromVerticalDeg));

export const leanBackRowRow = calculation({
  id: 'lean-back-row-share',
  title: 'Share of body mass in a lean-back row',
  area: 'variation',
  input: [
    {
      name: 'fromVerticalDeg',
      kind: 'number',
      unit: 'deg',
      min: 0,
      max: 90,
      about: 'Body angle from upright.',
    },
  ],
  result: [
    { name: 'shareOfBodyMass', unit: '1', about: 'Measured, on a straight line between measured angles.' },
    { name: 'fittedShare', unit: '1', about: 'One-constant fit, shown for comparison only.' },
    { name: 'fitError', unit: '1' },
  ],
  citations: leanBackRowCitations,
  calculate: ({ fromVerticalDeg }) => {
    const share = leanBackRowShare(fromVerticalDeg);
    if (share === null) {
      return refuse(
        'fromVerticalDeg',
        'outside-validity',
        'Measured from 30 to 75° only; give an angle between.',
      );
    }
    const fittedShare = leanBackRowFit(fromVerticalDeg);
    return answer({ shareOfBodyMass: share, fittedShare, fitError: fittedShare - share });
  },
  example: { fromVerticalDeg: 45 },
});
