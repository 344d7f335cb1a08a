/** The axes of the picture: days at the foot, and beside the panels only figures that occur. */
import { type LoadMeasure, measureTitles } from '#core/review/load-of-session.ts';
import { figure, shareInWords } from '#core/review/plain-words.ts';
import type { ReviewChart } from '#core/review/review-chart.ts';
import { say } from '#messages/en/staff/review/chart.ts';
import { type Area, breakY, type Scale, withRoom } from './chart-scale.ts';

export interface Drawn {
  readonly chart: ReviewChart;
  readonly scale: Scale;
  readonly area: Area;
}

export const Level = (props: {
  readonly className: string;
  readonly from: number;
  readonly to: number;
  readonly y: number;
}) => <line className={props.className} x1={props.from} x2={props.to} y1={props.y} y2={props.y} />;

const roomForLabel = 13;

const figureText = (value: number, measure: LoadMeasure): string =>
  measure === 'dose' ? shareInWords(value) : figure(value);

/** The lowest and the highest first, then as much as at first, then the newest. */
const loadFigures = ({ steps, loads }: ReviewChart): readonly number[] => {
  const known = [...steps.map(({ share }) => share), ...loads.map(({ value }) => value)]
    .filter((value) => value !== null)
    .reverse();
  if (known.length === 0) return [];
  const newest = steps.length > 0 ? steps.flatMap(({ share }) => share ?? []).reverse() : known;
  return [Math.max(...known), Math.min(...known), ...newest.filter((value) => value === 1), ...newest];
};

export const LoadAxis = ({ chart, scale, area }: Drawn) => {
  const { title, unit, against } = measureTitles[chart.measure];
  const { low, high } = chart.loadRange;
  const broken = breakY(chart.loadRange);
  return (
    <g>
      {broken === null ? null : (
        <path className="chart-break" d={`M${area.x - 24} ${broken}l14-4m0 5l-14 4`} />
      )}
      <text x={0} y={12}>
        <tspan className="chart-title">{title}</tspan> <tspan>{against ?? unit}</tspan>
      </text>
      {chart.measure === 'dose' && low <= 1 && high >= 1 ? (
        <Level className="chart-axis-soft" from={area.x} to={area.x + area.width} y={scale.load(1)} />
      ) : null}
      {withRoom(loadFigures(chart), scale.load, roomForLabel).map((value) => (
        <text key={value} className="chart-last" x={area.x - 7} y={scale.load(value) + 4}>
          {figureText(value, chart.measure)}
        </text>
      ))}
    </g>
  );
};

interface PainLabel {
  readonly value: number;
  readonly text: string;
  readonly className: string;
}

/** The thresholds of now name themselves; no pain, and the worst there is. */
const painLabels = ({ thresholds, painFoot }: ReviewChart): readonly PainLabel[] => {
  const last = thresholds.at(-1);
  const plain = (value: number): PainLabel => ({ value, text: String(value), className: 'chart-last' });
  return [
    ...(last
      ? [
          {
            value: last.painCeiling,
            text: say('limit', { limit: last.painCeiling }),
            className: 'chart-last chart-limit-name',
          },
        ]
      : []),
    ...(last && last.usualPainTop !== null
      ? [
          {
            value: last.usualPainTop,
            text: say('usual', { top: last.usualPainTop }),
            className: 'chart-last',
          },
        ]
      : []),
    plain(0),
    plain(painFoot),
  ];
};

export const PainAxis = ({ chart, scale, area }: Drawn) => (
  <g>
    <text className="chart-title" x={0} y={scale.painHead - 12}>
      {say('pain')}
    </text>
    <Level className="chart-axis-soft" from={area.x} to={area.x + area.width} y={scale.painHead} />
    {withRoom(painLabels(chart), ({ value }) => scale.pain(value), roomForLabel - 2).map((label) => (
      <text key={label.text} className={label.className} x={area.x - 7} y={scale.pain(label.value) + 4}>
        {label.text}
      </text>
    ))}
  </g>
);

/** The last label ends at the edge; one that would run into it is left out. */
const roomBeforeLast = 72;

export const DayAxis = ({ chart, scale, area }: Drawn) => (
  <g>
    <Level className="chart-axis" from={area.x} to={area.x + area.width} y={scale.foot} />
    {chart.ticks.map((tick) => {
      const x = scale.x(tick.day);
      const isLast = tick.day === chart.today;
      return (
        <g key={tick.day}>
          <line className="chart-axis" x1={x} x2={x} y1={scale.foot} y2={scale.foot + 4} />
          {isLast || area.x + area.width - x > roomBeforeLast ? (
            <text
              className={isLast ? 'chart-last' : 'chart-middle'}
              x={isLast ? area.x + area.width : x}
              y={scale.foot + 17}
            >
              {tick.label}
            </text>
          ) : null}
        </g>
      );
    })}
  </g>
);
