'use client';
/** The drawing itself. Loaded only on this page, after it: the charting library is large. */
import { memo, type PointerEvent, useMemo } from 'react';
import { ComposedChart, Line, ResponsiveContainer, usePlotArea, XAxis, YAxis } from 'recharts';
import type { DecisionMarker, ReviewChart } from '#core/review/review-chart.ts';
import { type Day, dayNumber } from '#core/time/day.ts';
import { DayAxis, LoadAxis, PainAxis } from './chart-axes.tsx';
import { ChartCursor } from './chart-cursor.tsx';
import { chartHeight, dayDomain, loadDomain, margin, quarter, scaleFor } from './chart-scale.ts';
import { DecisionMarkers } from './decision-markers.tsx';
import { DosePanel } from './dose-panel.tsx';
import { OtherMarks } from './other-marks.tsx';
import { Bands, Flares, PainPanel } from './pain-panel.tsx';
import { TreatmentMarks } from './treatment-marks.tsx';

/** Points of the staircase, with an empty one wherever a range ends: the line may not cross it. */
const loadLinePoints = ({ loadLine, steps }: Pick<ReviewChart, 'loadLine' | 'steps'>) => {
  // A line from session to session runs through their marks.
  const at = (day: Day) => dayNumber(day) + (steps.length > 0 ? 0 : quarter);
  return loadLine.flatMap((segment) => [
    ...segment.map(({ day, value }) => ({ at: at(day), load: value })),
    { at: at(segment.at(-1)!.day) + 0.01, load: null },
  ]);
};

interface ReviewPlotProps {
  readonly chart: ReviewChart;
  readonly onMarker: (marker: DecisionMarker) => void;
  readonly onDay: (dayNumber: number) => void;
  readonly hrefOf: (decisionId: string) => string;
}

const Layer = ({ chart, onMarker, onDay, hrefOf }: ReviewPlotProps) => {
  const area = usePlotArea();
  if (!area) return null;
  const scale = scaleFor(area, chart);
  const point = (event: PointerEvent<SVGRectElement>) => {
    const box = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (box) onDay(scale.dayNumberAt(event.clientX - box.left));
  };
  const drawn = { chart, scale, area };
  return (
    <>
      <Bands {...drawn} />
      <Flares {...drawn} />
      <TreatmentMarks {...drawn} />
      <rect className="chart-background" {...area} onPointerMove={point} onPointerDown={point} />
      <LoadAxis {...drawn} />
      <PainAxis {...drawn} />
      <DayAxis {...drawn} />
      <ChartCursor {...drawn} />
      <DosePanel {...drawn} />
      <PainPanel {...drawn} />
      <OtherMarks {...drawn} />
      <DecisionMarkers chart={chart} scale={scale} onSelect={onMarker} hrefOf={hrefOf} />
    </>
  );
};

const ReviewPlot = (props: ReviewPlotProps) => {
  const { chart } = props;
  const points = useMemo(() => loadLinePoints(chart), [chart]);
  return (
    <ResponsiveContainer width="100%" height={chartHeight(chart)}>
      <ComposedChart data={points} margin={margin} accessibilityLayer={false}>
        <XAxis dataKey="at" type="number" domain={dayDomain(chart)} allowDataOverflow hide />
        <YAxis yAxisId="load" domain={loadDomain(chart)} allowDataOverflow hide />
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
