/**
 * How much harder a lower chair is for the knee and the hip, relative to a seat of 64 cm.
 *
 * Peak moments rise as the seat falls: from 64 to 43 cm the hip × 2.4 and the knee × 1.9. Between
 * the two heights we read a straight line, which is our reading. Below 43 cm the rise is known to
 * flatten by 40 cm and no ratio is given. Static models cannot do this and are not used for it.
 */
import type { Citation } from '#core/sources/citation.ts';
import { interpolate } from '../body/interpolate.ts';

export const chairHeightCitations: readonly Citation[] = [
  {
    source: 'yoshioka-2014',
    locator: 'introduction: ratios of peak moment from 64 to 43 cm; results: flat from 40 to 10 cm',
    mark: 'second-hand',
    remark: 'The ratios are of an earlier study cited there; the plateau is their own result.',
  },
  {
    source: 'janssen-2002',
    locator: 'abstract: a higher seat lowers the knee moment by up to 60 %, the hip by up to 50 %',
    mark: 'seen',
    remark: 'Armrests lower the hip moment by about half.',
  },
];

const highSeatM = 0.64;
const lowSeatM = 0.43;
const kneeRatioAtLowSeat = 1.9;
const hipRatioAtLowSeat = 2.4;

const ratio = (seatHeightM: number, atLowSeat: number): number | null =>
  interpolate(
    [
      [lowSeatM, atLowSeat],
      [highSeatM, 1],
    ],
    seatHeightM,
  );

export const relativeKneeMoment = (seatHeightM: number): number | null =>
  ratio(seatHeightM, kneeRatioAtLowSeat);
export const relativeHipMoment = (seatHeightM: number): number | null =>
  ratio(seatHeightM, hipRatioAtLowSeat);
