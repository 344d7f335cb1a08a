'use client';
/** Strength against bad days. Loaded after its page: the charting library is large. */
import { ComposedChart, Line, ResponsiveContainer, usePlotArea, XAxis, YAxis } from 'recharts';
import { say } from '#messages/en/staff/rules.ts';
import { classOf, pathOf } from './mark-shape.tsx';
import { axisFor, type Box, placeLabels, type TrialPoint } from './trial-points.ts';

interface Axes {
  readonly days: readonly number[];
  readonly strength: readonly number[];
}

/** From a mark to a word that stands a line or more away. */
const Leader = ({ x, y, to }: { readonly x: number; readonly y: number; readonly to: Box }) => (
  <line className="trial-leader" x1={x} y1={y} x2={to.x > x ? to.x - 2 : to.x + to.width + 2} y2={to.y} />
);

const Marks = ({ points, axes }: { readonly points: readonly TrialPoint[]; readonly axes: Axes }) => {
  const area = usePlotArea();
  if (!area) return null;
  const marks = points.map((point) => ({
    ...point,
    x: area.x + (point.badDays / axes.days.at(-1)!) * area.width,
    y: area.y + (1 - point.strengthPercent / axes.strength.at(-1)!) * area.height,
  }));
  const places = placeLabels(marks, { left: area.x, right: area.x + area.width });
  return (
    <g>
      {marks.map(({ arm, kind, x, y, label }, place) => (
        <g key={arm}>
          <path className={classOf(kind)} d={pathOf(kind)} transform={`translate(${x} ${y})`} />
          {label && places[place]!.y !== y ? <Leader x={x} y={y} to={places[place]!} /> : null}
          {label ? (
            <text className="trial-label" x={places[place]!.x} y={places[place]!.y + 4}>
              {label}
            </text>
          ) : null}
        </g>
      ))}
    </g>
  );
};

const tick = { fill: 'var(--ink-soft)' };

const TrialPlot = ({ points }: { readonly points: readonly TrialPoint[] }) => {
  const axes = {
    days: axisFor(points.map(({ badDays }) => badDays)),
    strength: axisFor(points.map(({ strengthPercent }) => strengthPercent)),
  };
  const line = points.filter(({ onFrontier }) => onFrontier).sort((a, b) => a.badDays - b.badDays);
  return (
    <ResponsiveContainer width="100%" height={400}>
      <ComposedChart
        data={line}
        margin={{ top: 12, right: 12, bottom: 24, left: 8 }}
        accessibilityLayer={false}
      >
        <XAxis
          dataKey="badDays"
          type="number"
          domain={[0, axes.days.at(-1)!]}
          ticks={[...axes.days]}
          interval={0}
          tick={tick}
          label={{ value: say('axis-days'), position: 'insideBottom', offset: -14, fill: tick.fill }}
        />
        <YAxis
          type="number"
          domain={[0, axes.strength.at(-1)!]}
          ticks={[...axes.strength]}
          interval={0}
          tick={tick}
          width={52}
          label={{
            value: say('axis-strength'),
            angle: -90,
            position: 'insideLeft',
            fill: tick.fill,
            style: { textAnchor: 'middle' },
          }}
        />
        <Line
          dataKey="strengthPercent"
          className="trial-line"
          dot={false}
          activeDot={false}
          isAnimationActive={false}
        />
        <Marks points={points} axes={axes} />
      </ComposedChart>
    </ResponsiveContainer>
  );
};

export default TrialPlot;
