/** Load of a day beside the pain of the next morning and the one after: how far they went together. */
import { worked } from '#core/calculations/working.ts';
import type { PlannedSession } from '#core/prescribing/programme/planned-session.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { type LagRow, lagAssociationRow } from '#core/statistics/lag-association.ts';
import { measureTitles } from '../load-of-session.ts';
import { counted } from '../plain-words.ts';
import type { ReviewSeries } from '../series.ts';
import { reviewSettingOf } from '../settings.ts';
import { dailySeries } from './daily.ts';
import { type Finding, twoDecimals } from './finding.ts';

const when = { 1: 'the next morning', 2: 'the morning after that' } as const;
type ShownLag = keyof typeof when;

const sentence = (lag: LagRow, measure: string, few: number): string => {
  const pairs = counted(lag.pairs, 'pair');
  const about = `${measure} and pain on ${when[lag.lagDays as ShownLag]}, ${pairs}`;
  if (lag.correlation === null)
    return `${about}: cannot be told, because one of the two never changed or too few days pair up.`;
  const caution = lag.pairs < few ? ' Few pairs: some days more or less would move it.' : '';
  if (lag.band === null)
    return `${about}: correlation ${twoDecimals(lag.correlation)}; the days resemble each other so much that no band of chance can be given.${caution}`;
  const place = lag.outsideBand ? 'beyond' : 'within';
  return `${about}: correlation ${twoDecimals(lag.correlation)}, ${place} the ±${twoDecimals(lag.band)} that chance alone leaves.${caution}`;
};

const isShown = (lag: LagRow): boolean => lag.lagDays in when;

export const associationFinding = (
  series: ReviewSeries,
  planned: readonly PlannedSession[],
  settings?: SettingValues,
): Finding => {
  const finding = { id: 'association', title: 'Load beside the pain of the next two mornings' };
  if (series.loads.length === 0)
    return {
      ...finding,
      sentences: ['Not worked out: no session of this exercise lies in this time.'],
      workings: [],
    };
  const { working, outcome } = worked(lagAssociationRow, dailySeries(series, planned));
  if (!outcome.ok) {
    const reasons = outcome.refused.map((refusal) => refusal.reason);
    return {
      ...finding,
      sentences: [
        `Not worked out: ${reasons.join(' ')}`,
        'A day without a session counts as a rest when the patient was heard from and none was planned; other silent days count as unknown.',
      ],
      workings: [working],
    };
  }
  const few = reviewSettingOf(settings, 'review-few-pairs');
  const measure = measureTitles[series.measure].title;
  const shown = outcome.result.byLag.filter(isShown).map((lag) => sentence(lag, measure, few));
  return {
    ...finding,
    sentences: [
      ...shown,
      'Going together is no proof that one caused the other: training every other day makes such patterns alone.',
    ],
    workings: [working],
  };
};
