'use client';
/** The drawing itself. Loaded only on this page, after it: the charting library is large. */
import { memo, type PointerEvent, useMemo } from 'react';
import { ComposedChart, Line, ResponsiveContainer, usePlotArea, XAxis, YAxis } from 'recharts';
import { dayNumber } from '#core/day.ts';
import type { DecisionMarker, Picture } from '#core/review/picture.ts';
import { PictureCursor } from './picture-cursor.tsx';
import { DecisionMarkers } from './picture-gates.tsx';
import { PictureMarks } from './picture-marks.tsx';
import { dayDomain, loadDomain, scaleFor } from './picture-scale.ts';

/** Points of the staircase, with an empty one wherever a stretch ends: the line may not cross it. */
export const stairPoints = ({ stairs }: Pick<Picture, 'stairs'>) =>
  stairs.flatMap((stair) => [
    ...stair.map((mark) => ({ at: dayNumber(mark.day), load: mark.value })),
    { at: dayNumber(stair.at(-1)!.day) + 0.01, load: null },
  ]);

export interface PictureChartProps {
  readonly picture: Picture;
  readonly onMarker: (marker: DecisionMarker) => void;
  readonly onDay: (dayNumber: number) => void;
}

const Layer = ({ picture, onMarker, onDay }: PictureChartProps) => {
  const area = usePlotArea();
  if (!area) return null;
  const scale = scaleFor(area, picture);
  const point = (event: PointerEvent<SVGRectElement>) => {
    const box = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (box) onDay(scale.dayNumberAt(event.clientX - box.left));
  };
  return (
    <>
      <rect className="pic-ground" {...area} onPointerMove={point} onPointerDown={point} />
      <PictureCursor picture={picture} scale={scale} area={area} />
      <PictureMarks picture={picture} scale={scale} area={area} />
      <DecisionMarkers picture={picture} scale={scale} onSelect={onMarker} />
    </>
  );
};

export const PictureChart = (props: PictureChartProps) => {
  const { picture } = props;
  const points = useMemo(() => stairPoints(picture), [picture]);
  const loadTicks = [0, picture.loadTop / 2, picture.loadTop];
  return (
    <ResponsiveContainer width="100%" height={440}>
      <ComposedChart
        data={points}
        margin={{ top: 26, right: 52, bottom: 8, left: 0 }}
        accessibilityLayer={false}
      >
        <XAxis dataKey="at" type="number" domain={dayDomain(picture)} allowDataOverflow hide />
        <YAxis
          yAxisId="load"
          domain={loadDomain(picture.loadTop)}
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
          className="pic-stair"
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

export default memo(PictureChart);
