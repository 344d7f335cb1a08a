'use client';
/** The drawing itself. Loaded only on this page, after it: the charting library is large. */
import { memo, type PointerEvent, useMemo } from 'react';
import { ComposedChart, Line, ResponsiveContainer, usePlotArea, XAxis, YAxis } from 'recharts';
import type { DecisionMarker, ReviewChart } from '#core/review/review-chart.ts';
import { dayNumber } from '#core/time/day.ts';
import { ChartCursor } from './chart-cursor.tsx';
import { ChartMarks } from './chart-marks.tsx';
import { dayDomain, loadDomain, scaleFor } from './chart-scale.ts';
import { DecisionMarkers } from './decision-markers.tsx';

/** Points of the staircase, with an empty one wherever a range ends: the line may not cross it. */
const loadLinePoints = ({ loadLine }: Pick<ReviewChart, 'loadLine'>) =>
  loadLine.flatMap((segment) => [
    ...segment.map((mark) => ({ at: dayNumber(mark.day), load: mark.value })),
    { at: dayNumber(segment.at(-1)!.day) + 0.01, load: null },
  ]);

interface ReviewPlotProps {
  readonly chart: ReviewChart;
  readonly onMarker: (marker: DecisionMarker) => void;
  readonly onDay: (dayNumber: number) => void;
}

const Layer = ({ chart, onMarker, onDay }: ReviewPlotProps) => {
  const area = usePlotArea();
  if (!area) return null;
  const scale = scaleFor(area, chart);
  const point = (event: PointerEvent<SVGRectElement>) => {
    const box = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (box) onDay(scale.dayNumberAt(event.clientX - box.left));
  };
  return (
    <>
      <rect className="chart-background" {...area} onPointerMove={point} onPointerDown={point} />
      <ChartCursor chart={chart} scale={scale} area={area} />
      <ChartMarks chart={chart} scale={scale} area={area} />
      <DecisionMarkers chart={chart} scale={scale} onSelect={onMarker} />
    </>
  );
};

const ReviewPlot = (props: ReviewPlotProps) => {
  const { chart } = props;
  const points = useMemo(() => loadLinePoints(chart), [chart]);
  const loadTicks = [0, chart.loadTop / 2, chart.loadTop];
  return (
    <ResponsiveContainer width="100%" height={440}>
      <ComposedChart
        data={points}
        margin={{ top: 26, right: 72, bottom: 8, left: 0 }}
        accessibilityLayer={false}
      >
        <XAxis dataKey="at" type="number" domain={dayDomain(chart)} allowDataOverflow hide />
        <YAxis
          yAxisId="load"
          domain={loadDomain(chart.loadTop)}
          ticks={loadTicks}
          interval={0}
          tick={{ fill: 'var(--ink-soft)' }}
          allowDataOverflow
          width={44}
        />
        <Line
          yAxisId="load"
          dataKey="load"
          type="stepAfter"
          className="chart-load-line"
          dot={false}
          activeDot={false}
          connectNulls={false}
          isAnimationActive={false}
        />
        <Layer {...props} />
      </ComposedChart>
    </ResponsiveContainer>
  );
};

export default memo(ReviewPlot);
