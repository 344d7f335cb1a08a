'use client';
import { dayInWords } from '#core/review/plain-words.ts';
import type { ReviewChart } from '#core/review/review-chart.ts';
import { type DateRange, rangeWithin, shortestRange } from '#core/review/zoom.ts';
/** The whole time as a strip with two handles: native sliders, so that pointer, touch and keyboard all move them. */
import { addDays, type Day, daysBetween } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review.ts';
import { Button } from '#ui/design-system/button.tsx';

interface RangeSelectorProps {
  readonly chart: ReviewChart;
  readonly range: DateRange;
  readonly onRange: (range: DateRange) => void;
  readonly address: string;
}

/** The steps of the load, small, over the whole time; 100 wide and 24 high. */
const stripPath = ({ loadLine, loadRange }: ReviewChart, x: (day: Day) => number): string => {
  const { low, high } = loadRange;
  return loadLine
    .map((segment) =>
      segment
        .map(({ day, value }, place) => {
          const y = 22 - ((value - low) / (high - low)) * 20;
          return place === 0 ? `M${x(day)} ${y}` : `H${x(day)}V${y}`;
        })
        .join(''),
    )
    .join('');
};

const Strip = ({ chart, range }: Pick<RangeSelectorProps, 'chart' | 'range'>) => {
  const span = daysBetween(chart.since, chart.today);
  const x = (day: Day) => (daysBetween(chart.since, day) / span) * 100;
  return (
    <svg className="range-strip" viewBox="0 0 100 24" preserveAspectRatio="none" aria-hidden="true">
      <rect
        className="range-chosen"
        x={x(range.from)}
        width={x(range.to) - x(range.from)}
        y={0}
        height={24}
      />
      <path className="range-load" d={stripPath(chart, x)} />
      {chart.markers
        .filter((marker) => marker.word === 'pause' || marker.word === 'ease-back')
        .map((marker) => (
          <line
            key={marker.id}
            className="range-marker"
            x1={x(marker.day)}
            x2={x(marker.day)}
            y1={0}
            y2={24}
          />
        ))}
    </svg>
  );
};

const ends = { from: say('range.from'), to: say('range.to') } as const;

export const RangeSelector = ({ chart, range, onRange, address }: RangeSelectorProps) => {
  const span = daysBetween(chart.since, chart.today);
  if (span <= shortestRange) return null;
  const isWhole = range.from === chart.since && range.to === chart.today;
  const words = say('range.span', {
    first: dayInWords(range.from, chart.today),
    last: dayInWords(range.to, chart.today),
    count: daysBetween(range.from, range.to),
  });
  return (
    <fieldset className="range-selector screen-only">
      <legend>{say('range.legend', { span: words })}</legend>
      <div className="range-track">
        <Strip chart={chart} range={range} />
        {(['from', 'to'] as const).map((end) => (
          <input
            key={end}
            type="range"
            className="range-handle"
            aria-label={ends[end]}
            aria-valuetext={dayInWords(range[end])}
            min={0}
            max={span}
            value={daysBetween(chart.since, range[end])}
            onChange={(event) => {
              const day = addDays(chart.since, Number(event.target.value));
              onRange(rangeWithin(chart, { ...range, [end]: day }, end));
            }}
          />
        ))}
      </div>
      {isWhole ? null : (
        <div className="row">
          <Button tone="quiet" onClick={() => onRange({ from: chart.since, to: chart.today })}>
            {say('range.whole')}
          </Button>
          <a href={`${address}&from=${range.from}&to=${range.to}`}>{say('range.only')}</a>
        </div>
      )}
    </fieldset>
  );
};
