/**
 * The engine's sum chart over the usual pain of the baseline, told with how often such a chart errs. The same
 * numbers as the rule on a slow rise of morning pain, read once more from the mornings shown.
 */
import { type Working, worked } from '#core/calculations/working.ts';
import { topOver } from '#core/decision/facts/joint-facts.ts';
import { type EngineSettingValues, engineSettingValues, engineVersionOf } from '#core/decision/settings.ts';
import type { Baseline } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { cusumChartRow } from '#core/statistics/cusum-chart.ts';
import { diaryFalseAlarmsRow } from '#core/statistics/diary-false-alarms.ts';
import { counted, dayInWords, figure, jointInWords } from '../plain-words.ts';
import type { ReviewSeries } from '../series.ts';
import { painMornings } from './daily.ts';
import { type Finding, wholePercent } from './finding.ts';

/** As the engine has them: an allowance of half a deviation, and a deviation of at least one point. */
const allowanceInSigma = 0.5;
const leastDeviation = 1;
/** A chart is looked at for a year at most. */
const mostMornings = 365;

const titled = (sentences: readonly string[], workings: readonly Working[] = []): Finding => ({
  id: 'control-chart',
  title: 'Control chart on the baseline',
  sentences,
  workings,
});

/** Rates are computed for intervals of 4 and 5 deviations, and for baselines of 14 and 28 mornings. */
const falseAlarms = (
  interval: number,
  values: number,
  inflation: number,
): Pick<Finding, 'sentences' | 'workings'> => {
  if (interval !== 4 && interval !== 5)
    return {
      sentences: [
        `How often a chart with an interval of ${figure(interval)} deviations errs is not computed.`,
      ],
      workings: [],
    };
  const baselineDays = values >= 28 ? '28' : '14';
  const apart = worked(diaryFalseAlarmsRow, { baselineDays, dayToDayCorrelation: '0' });
  const alike = worked(diaryFalseAlarmsRow, { baselineDays, dayToDayCorrelation: '0.5' });
  if (!apart.outcome.ok || !alike.outcome.ok) return { sentences: [], workings: [] };
  const [least, most] = [apart.outcome.result, alike.outcome.result];
  const within = (days: 28 | 60): string => {
    const name = `falseH${interval}Within${days}Days` as const;
    return `${wholePercent(least[name])} to ${wholePercent(most[name])} within ${days} days`;
  };
  const widened =
    inflation === 1
      ? ''
      : ` Here the scatter is widened by ${figure(inflation)}, for which no rate is computed; it should err less often.`;
  return {
    sentences: [
      `False alarms: on invented diaries of unchanged pain such a chart, set from ${baselineDays} mornings, alarmed in ${within(28)} and ${within(60)}; the more neighbouring days are alike, the more often.${widened}`,
    ],
    workings: [apart.working, alike.working],
  };
};

type Mornings = ReturnType<typeof painMornings>;

/** The mornings after the last row of calm ones, at which the engine's sum fell to 0. In version 1 it never did. */
const sinceCalm = (all: Mornings, baseline: Baseline, numbers: EngineSettingValues): Mornings => {
  if (engineVersionOf(numbers) < 2) return all;
  const top = baseline.usualPain === null ? 0 : topOver(baseline.usualPain, baseline);
  let calm = 0;
  let from = 0;
  all.forEach(({ pain }, place) => {
    calm = pain <= top ? calm + 1 : 0;
    if (calm >= numbers['signal-calm-mornings']) from = place + 1;
  });
  return all.slice(from);
};

const endOfSignal = (numbers: EngineSettingValues): string =>
  engineVersionOf(numbers) < 2
    ? 'a new baseline is set'
    : `${numbers['signal-calm-mornings']} answered mornings in a row lie within the usual band or a new baseline is set`;

const chartOver = (series: ReviewSeries, baseline: Baseline, settings?: SettingValues): Finding => {
  const numbers = engineSettingValues(settings);
  const spread = baseline.morningSpread!;
  const sigma = Math.max(leastDeviation, spread.standardDeviation) * numbers['signal-inflation'];
  const since = painMornings(series).filter((one) => one.day > baseline.setOn);
  const mornings = sinceCalm(since, baseline, numbers).slice(0, mostMornings);
  const baselineValues = `Baseline set on ${dayInWords(baseline.setOn, series.today)}: usual pain ${baseline.usualPain}, scatter ${figure(spread.standardDeviation)} from ${counted(spread.values, 'morning')}.`;
  if (since.length === 0) return titled([baselineValues, 'No morning since then has an answer.']);
  if (mornings.length === 0)
    return titled([
      baselineValues,
      `The last ${numbers['signal-calm-mornings']} answered mornings or more lay within the usual band, so the sum stands at 0 and no signal does.`,
    ]);
  const { working, outcome } = worked(cusumChartRow, {
    values: mornings.map((one) => one.pain),
    target: baseline.usualPain!,
    sigma,
    allowance: allowanceInSigma * sigma,
    decisionInterval: numbers['signal-interval'] * sigma,
  });
  if (!outcome.ok) return titled(['Not worked out.']);
  const { high, highAlarms } = outcome.result;
  const first = highAlarms[0];
  const limit = figure(numbers['signal-interval'] * sigma);
  const stand = `Over ${counted(mornings.length, 'morning')} the sum over usual pain stands at ${figure(high.at(-1)!)}; it signals over ${limit}.`;
  const signal =
    first === undefined
      ? 'It has not signalled.'
      : `It first signalled on ${dayInWords(mornings[first - 1]!.day, series.today)}, and a signal stays until ${endOfSignal(numbers)}.`;
  const errs = falseAlarms(numbers['signal-interval'], spread.values, numbers['signal-inflation']);
  return titled([baselineValues, `${stand} ${signal}`, ...errs.sentences], [working, ...errs.workings]);
};

export const controlChartFinding = (
  series: ReviewSeries,
  baselines: readonly Baseline[],
  settings?: SettingValues,
): Finding => {
  const joint = jointInWords(series.joint);
  const baseline = baselines.findLast((row) => row.joint === series.joint && row.setOn <= series.today);
  if (!baseline || baseline.usualPain === null)
    return titled([`Not drawn: no usual pain is set for the ${joint}.`]);
  const least = engineSettingValues(settings)['signal-least-values'];
  const values = baseline.morningSpread?.values ?? 0;
  if (values < least)
    return titled([
      `Not drawn: the baseline was set from ${counted(values, 'quiet morning')}; ${least} are needed.`,
    ]);
  if (baseline.setOn < series.since)
    return titled([
      `Not drawn: the baseline was set on ${dayInWords(baseline.setOn, series.today)}, before the time shown. Choose a longer time.`,
    ]);
  return chartOver(series, baseline, settings);
};
