'use client';
/** The picture with its key, a range of it to look at, and the words of what is under the pointer or the keyboard. */
import dynamic from 'next/dynamic';
import { type ReactNode, useCallback, useDeferredValue, useMemo, useState } from 'react';
import type { DayDetail } from '#core/review/day-detail.ts';
import type { DecisionMarker } from '#core/review/review-chart.ts';
import { type DateRange, daysWithin, zoomed } from '#core/review/zoom.ts';
import { dayFromNumber, dayNumber } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review.ts';
import { Tally } from './by-dose/tally.tsx';
import type { Answers } from './by-dose/tally-table.tsx';
import { CursorDay } from './chart/chart-cursor.tsx';
import { ChartDetail, type Detail, noDetail } from './chart/chart-detail.tsx';
import { ChartLegend } from './chart/chart-legend.tsx';
import { markerName } from './chart/decision-markers.tsx';
import { RangeSelector } from './chart/range-selector.tsx';
import { chartFrom, type SentChart } from './chart/sent-chart.ts';
import { TreatmentList } from './chart/treatment-marks.tsx';

const Chart = dynamic(() => import('./chart/review-plot.tsx'), {
  ssr: false,
  loading: () => <p className="soft">{say('chart-loading')}</p>,
});

const ofMarker = (marker: DecisionMarker, today: string): Detail => ({
  title: markerName(marker, today),
  lines: [...marker.reasons, marker.answered ?? say('not-answered')],
  decisionId: marker.id,
  day: marker.day,
});

const ofDay = ({ text, lines, decisionId, day }: DayDetail): Detail => ({
  title: text,
  lines,
  decisionId,
  day,
});

export interface ReviewChartViewProps {
  readonly sent: SentChart;
  /** Address of this review, to which a range can be added. */
  readonly address: string;
  /** How the joint answered each dose; null = no exercise is shown. */
  readonly answers: Answers | null;
  /** Stands under the key of the picture. */
  readonly children: ReactNode;
}

export const ReviewChartView = ({ sent, address, answers, children }: ReviewChartViewProps) => {
  const chart = useMemo(() => chartFrom(sent), [sent]);
  const [detail, setDetail] = useState<Detail>(noDetail);
  const [range, setRange] = useState<DateRange>({ from: chart.since, to: chart.today });
  // A handle moves at once; the drawing follows when there is time for it.
  const drawn = useDeferredValue(range);
  const shown = useMemo(() => zoomed(chart, drawn), [chart, drawn]);
  // The buttons go by the range asked for, so that a press before the drawing has followed is not lost.
  const days = useMemo(() => daysWithin(chart, range), [chart, range]);
  const details = useMemo(() => new Map(shown.days.map((detail) => [detail.day, detail])), [shown]);
  const hrefOf = useCallback((id: string) => `${address}&decision=${id}#decision-${id}`, [address]);
  const onMarker = useCallback((marker: DecisionMarker) => setDetail(ofMarker(marker, chart.today)), [chart]);
  const onDay = useCallback(
    (number: number) => {
      const detail = details.get(dayFromNumber(number));
      if (detail) setDetail((known) => (known.title === detail.text ? known : ofDay(detail)));
    },
    [details],
  );
  return (
    <figure className="review-chart stack-close">
      <div className="chart-by-dose">
        <div className="chart-box">
          <CursorDay value={detail.day === null ? null : dayNumber(detail.day)}>
            <Chart chart={shown} onMarker={onMarker} onDay={onDay} hrefOf={hrefOf} />
          </CursorDay>
        </div>
        <figcaption>
          <ChartLegend chart={shown} />
          <TreatmentList chart={shown} />
        </figcaption>
        {answers && chart.measure === 'dose' ? <Tally answers={answers} range={chart.loadRange} /> : null}
      </div>
      {children}
      <RangeSelector chart={chart} range={range} onRange={setRange} address={address} />
      <ChartDetail detail={detail} days={days} onDay={(detail) => setDetail(ofDay(detail))} hrefOf={hrefOf} />
    </figure>
  );
};
