/**
 * The picture as it is sent to the browser: what is said of a day and of a decision is mostly the same few
 * sentences, so each is sent once and named by its number.
 */
import type { DayDetail } from '#core/review/day-detail.ts';
import type { DecisionMarker, ReviewChart } from '#core/review/review-chart.ts';
import { type AsText, asText, fromText } from '../../as-text.ts';

type Numbers = readonly number[];

type SentDay = readonly [day: string, text: string, lines: Numbers, decisionId: string | null];

interface Sent extends Omit<ReviewChart, 'days' | 'markers'> {
  readonly sentences: readonly string[];
  readonly days: readonly SentDay[];
  readonly markers: readonly (Omit<DecisionMarker, 'reasons'> & { readonly reasons: Numbers })[];
}

export type SentChart = AsText<Sent>;

export const sentChart = (chart: ReviewChart): SentChart => {
  const numbers = new Map<string, number>();
  const numberOf = (sentence: string): number => {
    const known = numbers.get(sentence) ?? numbers.size;
    numbers.set(sentence, known);
    return known;
  };
  return asText<Sent>({
    ...chart,
    days: chart.days.map(({ day, text, lines, decisionId }) => [day, text, lines.map(numberOf), decisionId]),
    markers: chart.markers.map((marker) => ({ ...marker, reasons: marker.reasons.map(numberOf) })),
    sentences: [...numbers.keys()],
  });
};

export const chartFrom = (sent: SentChart): ReviewChart => {
  const { sentences, days, markers, ...chart } = fromText(sent);
  const said = (numbers: Numbers): readonly string[] => numbers.map((number) => sentences[number]!);
  return {
    ...chart,
    days: days.map(
      ([day, text, lines, decisionId]): DayDetail => ({ day, text, lines: said(lines), decisionId }),
    ),
    markers: markers.map((marker) => ({ ...marker, reasons: said(marker.reasons) })),
  };
};
