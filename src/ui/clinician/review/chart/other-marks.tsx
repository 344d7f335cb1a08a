/** Under the decisions: days that would have been others, filled where more cautious and outlined where bolder. */
import type { Drawn } from './chart-axes.tsx';

const size = 8;

export const OtherMarks = ({ chart, scale }: Drawn) => (
  <g>
    {chart.others.map(({ day, way }) => (
      <rect
        key={day}
        className={`chart-other chart-other-${way}`}
        x={scale.x(day) - size / 2}
        y={scale.others - size / 2}
        width={size}
        height={size}
      />
    ))}
  </g>
);
