/** How often side effects were reported, as evidence to show. Different denominators: the figures do not add up or compare. */
import type { Citation } from '#core/sources/citation.ts';

export interface SideEffectReport {
  readonly id: string;
  /** People, or facilities where a survey asked those. */
  readonly denominator: number;
  readonly of: 'people' | 'facilities';
  readonly events: readonly { readonly effect: string; readonly count?: number; readonly percent?: number }[];
  readonly citation: Citation;
}

export const sideEffectReports = [
  {
    id: 'users-2017',
    denominator: 250,
    of: 'people',
    events: [
      { effect: 'delayed muscle soreness', percent: 39.2 },
      { effect: 'numbness', percent: 18.5 },
      { effect: 'fainting or dizziness', percent: 14.6 },
      { effect: 'bruising', percent: 13.1 },
    ],
    citation: { source: 'side-effects-survey-2017', locator: 'abstract', mark: 'seen' },
  },
  {
    id: 'japan-2006',
    denominator: 12_642,
    of: 'people',
    events: [
      { effect: 'bleeding under the skin', percent: 13.1 },
      { effect: 'numbness', percent: 1.297 },
      { effect: 'light-headedness', percent: 0.277 },
      { effect: 'cold feeling', percent: 0.127 },
      { effect: 'venous clot', percent: 0.055 },
      { effect: 'heart disease worse', percent: 0.016 },
      { effect: 'pulmonary embolism', percent: 0.008 },
      { effect: 'rhabdomyolysis', percent: 0.008 },
    ],
    citation: {
      source: 'side-effects-japan-2006',
      locator: 'figures restated by others',
      mark: 'second-hand',
      remark: 'denominator from memory; one page prints 12,462',
    },
  },
  {
    id: 'reports-2022',
    denominator: 25_813,
    of: 'people',
    events: [{ effect: 'any side effect', count: 1672 }],
    citation: { source: 'side-effects-review-2022', locator: 'abstract', mark: 'seen' },
  },
  {
    id: 'patients-2020',
    denominator: 168,
    of: 'people',
    events: [
      { effect: 'any side effect with occlusion', count: 10 },
      { effect: 'rare side effect with occlusion', count: 3 },
    ],
    citation: {
      source: 'side-effects-patients-2020',
      locator: 'abstract: 168 with occlusion, 154 without',
      mark: 'seen',
      remark: 'not more likely than with exercise alone in the randomised trials',
    },
  },
] as const satisfies readonly SideEffectReport[];

/** Reported share in per cent: as printed, or counted from the numbers. */
export const reportedPercent = (
  report: SideEffectReport,
  event: SideEffectReport['events'][number],
): number | null => {
  if (event.percent !== undefined) return event.percent;
  return event.count === undefined ? null : (100 * event.count) / report.denominator;
};
