/** What was done about the disease: a rule through both panels, a wedge under the axis, a bar as long as a course. */
import type { Drawn } from './chart-axes.tsx';
import { joined } from './mark-paths.ts';

const wedge = 5;

export const TreatmentMarks = ({ chart, scale, area }: Drawn) => {
  const { foot } = scale;
  return (
    <g>
      <path
        className="chart-treatment"
        d={joined(chart.treatments, ({ from }) => `M${scale.x(from)} ${area.y}V${foot}`)}
      />
      <path
        className="chart-treatment-wedge"
        d={joined(
          chart.treatments,
          ({ from }) => `M${scale.x(from)} ${foot}l${wedge} ${wedge * 1.4}h${-wedge * 2}z`,
        )}
      />
      <path
        className="chart-treatment-course"
        d={joined(
          chart.treatments.filter(({ from, to }) => to > from),
          ({ from, to }) => `M${scale.x(from)} ${foot + 1.5}H${scale.x(to)}`,
        )}
      />
    </g>
  );
};

/** Beside the key, so that nothing has to be pointed at. */
export const TreatmentList = ({ chart }: Pick<Drawn, 'chart'>) =>
  chart.treatments.length === 0 ? null : (
    <ul className="plain-list chart-treatments">
      {chart.treatments.map(({ from, text }) => (
        <li key={`${from} ${text}`}>
          <span className="key-treatment" aria-hidden="true" /> {text}
        </li>
      ))}
    </ul>
  );
