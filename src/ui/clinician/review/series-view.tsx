/** The picture, its words and its table: one series told three ways. */
import type { ReactNode } from 'react';
import { byDoseInWords, stepsInWords } from '#core/review/dose/dose-words.ts';
import type { ReviewChart } from '#core/review/review-chart.ts';
import type { ReviewSeries } from '#core/review/series.ts';
import { reviewColumns, reviewTable } from '#core/review/table.ts';
import { reviewWords } from '#core/review/words.ts';
import { say as chartWords } from '#messages/en/staff/review/chart.ts';
import { say } from '#messages/en/staff/review.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { ReviewAnswer } from '../answers.ts';
import { type Answers, TallyTable } from './by-dose/tally-table.tsx';
import { sentChart } from './chart/sent-chart.ts';
import { ReviewChartView } from './review-chart-view.tsx';

interface SeriesViewProps {
  readonly series: ReviewSeries;
  readonly chart: ReviewChart;
  readonly title: string;
  /** Course and answers of the exercise shown; null = none is. */
  readonly dose: ReviewAnswer['dose'];
  readonly address: string;
  /** What the picture shows, to be chosen otherwise. */
  readonly choices: ReactNode;
  readonly joints: ReactNode;
  /** The days as a table as well: asked for by the address, since it is as long as the time shown. */
  readonly isTable: boolean;
}

const countsOf = ({ doses, corridor, leftOut }: Answers): Answers => ({ doses, corridor, leftOut });

const wordsOf = ({ series, dose }: SeriesViewProps): readonly string[] => {
  const words = reviewWords(series);
  const [sessions, ...others] = words;
  if (!dose || sessions === undefined) return words;
  const from = dose.answers.sessions[0]?.day ?? series.since;
  return [
    sessions,
    ...stepsInWords(dose.course.steps, series),
    ...byDoseInWords(dose.answers, from),
    ...others,
  ];
};

export const SeriesView = (props: SeriesViewProps) => {
  const { series, chart, title, dose, address, choices, joints, isTable } = props;
  const words = wordsOf(props);
  return (
    <section className="stack">
      <div className="stack-close">
        <h2>{title}</h2>
        {choices}
        <ReviewChartView sent={sentChart(chart)} address={address} answers={dose && countsOf(dose.answers)}>
          {joints}
        </ReviewChartView>
      </div>
      <div className="opens-in-row">
        <Disclosure summary={chartWords('in-words', { count: words.length })}>
          <ul className="review-words">
            {words.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <p className="soft">{say('series-note')}</p>
        </Disclosure>
        {isTable ? null : (
          <p className="screen-only">
            <a href={`${address}&table=1#days`}>{say('table')}</a>
          </p>
        )}
      </div>
      {isTable ? (
        <div id="days" className="stack">
          {dose && dose.answers.doses.length > 0 ? (
            <TallyTable caption={chartWords('by-dose.of', { title })} answers={dose.answers} />
          ) : null}
          <DataTable
            caption={title}
            columns={reviewColumns(series)}
            rows={reviewTable(series).map((row) => ({
              key: row.day,
              cells: reviewColumns(series).map((column) => row[column.key]),
            }))}
            empty={say('table-empty')}
          />
        </div>
      ) : null}
    </section>
  );
};
