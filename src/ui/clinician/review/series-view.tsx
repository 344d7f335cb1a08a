/** The picture, its words and its table: one series told three ways. */
import type { ChartNames } from '#core/review/day-detail.ts';
import { reviewChartOf } from '#core/review/review-chart.ts';
import type { ReviewSeries } from '#core/review/series.ts';
import { reviewColumns, reviewTable } from '#core/review/table.ts';
import { reviewWords } from '#core/review/words.ts';
import { say } from '#messages/en/staff/review.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ReviewChartView } from './review-chart-view.tsx';

interface SeriesViewProps {
  readonly series: ReviewSeries;
  readonly title: string;
  readonly names: ChartNames;
  readonly address: string;
}

export const SeriesView = ({ series, title, names, address }: SeriesViewProps) => (
  <section className="stack">
    <h2>{title}</h2>
    <ReviewChartView chart={reviewChartOf(series, names)} address={address} />
    <ul className="review-words">
      {reviewWords(series).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
    <p className="soft">{say('series-note')}</p>
    <Disclosure summary={say('table')}>
      <DataTable
        caption={title}
        columns={reviewColumns(series)}
        rows={reviewTable(series).map((row) => ({
          key: row.day,
          cells: reviewColumns(series).map((column) => row[column.key]),
        }))}
        empty={say('table-empty')}
      />
    </Disclosure>
  </section>
);
