/** The two axes of the picture: days between the panels, pain downwards. */
import type { ReviewChart } from '#core/review/review-chart.ts';
import { say } from '#messages/en/staff/review.ts';
import type { Area, Scale } from './chart-scale.ts';

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

const painLevels = [0, 5, 10];

export const PainAxis = ({ scale, area }: Drawn) => (
  <g>
    <Level className="chart-axis-soft" from={area.x} to={area.x + area.width} y={scale.painHead} />
    {painLevels.map((level) => (
      <text key={level} className="chart-last" x={area.x - 8} y={scale.pain(level) + 4}>
        {level}
      </text>
    ))}
    <text className="chart-title" x={area.x + 4} y={scale.foot - 4}>
      {say('pain-axis')}
    </text>
  </g>
);

/** The last label ends at the edge; one that would run into it is left out. */
const roomBeforeLast = 72;

export const DayAxis = ({ chart, scale, area }: Drawn) => (
  <g>
    <Level className="chart-axis" from={area.x} to={area.x + area.width} y={scale.loadFoot} />
    {chart.ticks.map((tick) => {
      const x = scale.x(tick.day);
      const isLast = tick.day === chart.today;
      return (
        <g key={tick.day}>
          <line className="chart-axis" x1={x} x2={x} y1={scale.loadFoot} y2={scale.loadFoot + 5} />
          {isLast || area.x + area.width - x > roomBeforeLast ? (
            <text
              className={isLast ? 'chart-last' : 'chart-middle'}
              x={isLast ? area.x + area.width : x}
              y={scale.loadFoot + 19}
            >
              {tick.label}
            </text>
          ) : null}
        </g>
      );
    })}
  </g>
);
