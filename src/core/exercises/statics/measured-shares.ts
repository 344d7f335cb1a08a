/**
 * Every measured share of body mass found for push-ups, rows and pull-ups, as published. Some are
 * peaks of a moving body and some are static holds: they are not the same quantity and are not mixed.
 */
import type { Mark } from '#core/sources/citation.ts';
import type { VariationSource } from '#core/sources/variation.ts';

export interface MeasuredShare {
  readonly variant: string;
  readonly quantity: 'moving, peak' | 'held, arms straight' | 'held, arms bent';
  readonly share: number;
  readonly group: string;
  readonly source: VariationSource;
  readonly mark: Mark;
  /** Heights of the closed form that stands beside it; left out where no model here answers it. */
  readonly pushUp?: { readonly handHeightM: number; readonly footHeightM: number };
  readonly rowFromVerticalDeg?: number;
}

const moving = (variant: string, share: number, pushUp?: MeasuredShare['pushUp']): MeasuredShare => ({
  variant,
  quantity: 'moving, peak',
  share,
  group: '14 men and 9 women',
  source: 'ebben-2011',
  mark: 'second-hand',
  ...(pushUp ? { pushUp } : {}),
});

const leanBack = (rowFromVerticalDeg: number, share: number): MeasuredShare => ({
  variant: `lean-back row, ${rowFromVerticalDeg}° from upright`,
  quantity: 'held, arms straight',
  share,
  group: '40 people',
  source: 'melrose-dawes-2015',
  mark: 'seen',
  rowFromVerticalDeg,
});

const held = (
  variant: string,
  arms: 'straight' | 'bent',
  share: number,
  group: string,
  source: VariationSource,
  mark: Mark,
): MeasuredShare => ({
  variant,
  quantity: arms === 'straight' ? 'held, arms straight' : 'held, arms bent',
  share,
  group,
  source,
  mark,
  ...(variant === 'push-up' && arms === 'straight' ? { pushUp: { handHeightM: 0, footHeightM: 0 } } : {}),
});

const peak = (variant: string, share: number, group: string, source: VariationSource): MeasuredShare => ({
  variant,
  quantity: 'moving, peak',
  share,
  group,
  source,
  mark: 'seen',
});

export const measuredShares: readonly MeasuredShare[] = [
  moving('push-up', 0.64, { handHeightM: 0, footHeightM: 0 }),
  moving('push-up, hands on 30.48 cm', 0.55, { handHeightM: 0.3048, footHeightM: 0 }),
  moving('push-up, hands on 60.96 cm', 0.41, { handHeightM: 0.6096, footHeightM: 0 }),
  moving('push-up, feet on 30.48 cm', 0.7, { handHeightM: 0, footHeightM: 0.3048 }),
  moving('push-up, feet on 60.96 cm', 0.74, { handHeightM: 0, footHeightM: 0.6096 }),
  moving('push-up on the knees', 0.49),
  held('push-up', 'straight', 0.6916, '28 men', 'suprak-2011', 'second-hand'),
  held('push-up', 'bent', 0.7504, '28 men', 'suprak-2011', 'second-hand'),
  held('push-up on the knees', 'straight', 0.5356, '28 men', 'suprak-2011', 'memory'),
  held('push-up on the knees', 'bent', 0.618, '28 men', 'suprak-2011', 'memory'),
  held('push-up', 'straight', 0.67, 'men', 'mier-2014', 'seen'),
  held('push-up', 'straight', 0.651, 'women', 'mier-2014', 'seen'),
  held('push-up', 'bent', 0.746, 'men', 'mier-2014', 'seen'),
  held('push-up', 'bent', 0.703, 'women', 'mier-2014', 'seen'),
  held('push-up on the knees', 'straight', 0.525, 'men', 'mier-2014', 'seen'),
  held('push-up on the knees', 'straight', 0.515, 'women', 'mier-2014', 'seen'),
  held('push-up on the knees', 'bent', 0.601, 'men', 'mier-2014', 'seen'),
  held('push-up on the knees', 'bent', 0.566, 'women', 'mier-2014', 'seen'),
  peak('push-up', 0.977, 'men', 'mier-2014'),
  peak('push-up', 0.8, 'women', 'mier-2014'),
  peak('push-up on the knees', 0.797, 'men', 'mier-2014'),
  peak('push-up on the knees', 0.682, 'women', 'mier-2014'),
  held('push-up', 'straight', 0.664, '8 men', 'gouvali-2005', 'seen'),
  held('push-up on the knees', 'straight', 0.529, '8 men', 'gouvali-2005', 'seen'),
  held('suspended push-up, level', 'straight', 0.504, '28 men', 'gulmez-2017', 'seen'),
  held('suspended push-up, level', 'bent', 0.753, '28 men', 'gulmez-2017', 'seen'),
  leanBack(30, 0.3744),
  leanBack(45, 0.5288),
  leanBack(60, 0.6808),
  leanBack(75, 0.7938),
  peak('pull-up, with the effect of movement', 1.51, 'men', 'emerson-2014'),
  peak('pull-up with foot assistance, with the effect of movement', 1.14, 'men', 'emerson-2014'),
  peak('pull-up with foot assistance, with the effect of movement, low', 0.93, 'women', 'emerson-2014'),
  peak('pull-up with foot assistance, with the effect of movement, high', 0.98, 'women', 'emerson-2014'),
];
