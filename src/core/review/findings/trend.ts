/** Whether morning pain rose or fell over the time shown, and by how much a week. */
import { worked } from '#core/calculations/working.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { mannKendallRow } from '#core/statistics/mann-kendall.ts';
import { senSlopeRow } from '#core/statistics/sen-slope.ts';
import { dayNumber } from '#core/time/day.ts';
import { counted, dayInWords, figure } from '../plain-words.ts';
import type { ReviewSeries } from '../series.ts';
import { reviewSettingOf } from '../settings.ts';
import { painMornings } from './daily.ts';
import { type Finding, pInWords, twoDecimals } from './finding.ts';

/** All pairs of mornings are compared, so their number is kept to a year’s. */
const mostMornings = 365;

const isSame = (values: readonly number[]): boolean => new Set(values).size === 1;

export const trendFinding = (series: ReviewSeries, settings?: SettingValues): Finding => {
  const finding = { id: 'trend', title: 'Trend of morning pain' };
  const mornings = painMornings(series).slice(-mostMornings);
  const fewest = reviewSettingOf(settings, 'review-trend-mornings');
  if (mornings.length < fewest)
    return {
      ...finding,
      sentences: [
        `Not worked out: ${fewest} mornings with an answer are needed; there ${mornings.length === 1 ? 'is' : 'are'} ${mornings.length}.`,
      ],
      workings: [],
    };
  const values = mornings.map((one) => one.pain);
  const from = `Over ${counted(mornings.length, 'morning')} from ${dayInWords(mornings[0]!.day, series.today)}`;
  if (isSame(values))
    return {
      ...finding,
      sentences: [`${from} every answer was ${figure(values[0]!)}; there is no trend to test.`],
      workings: [],
    };
  const slope = worked(senSlopeRow, { values, times: mornings.map((one) => dayNumber(one.day)) });
  const trend = worked(mannKendallRow, { values });
  if (!slope.outcome.ok || !trend.outcome.ok)
    return { ...finding, sentences: ['Not worked out.'], workings: [] };
  const { s, pTwoSided } = trend.outcome.result;
  return {
    ...finding,
    sentences: [
      `${from} the middle slope was ${twoDecimals(slope.outcome.result.slope * 7)} points a week.`,
      `Trend test: S ${String(s).replace('-', '−')}, ${pInWords(pTwoSided)}. It takes mornings as independent; mornings that resemble their neighbours make small p values too common.`,
    ],
    workings: [slope.working, trend.working],
  };
};
