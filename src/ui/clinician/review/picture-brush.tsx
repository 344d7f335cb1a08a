'use client';
/** The whole time as a strip with two handles: native sliders, so that pointer, touch and keyboard all move them. */
import { addDays, type Day, daysBetween } from '#core/day.ts';
import type { Picture } from '#core/review/picture.ts';
import { counted, dayInWords } from '#core/review/plain-words.ts';
import { type DateRange, shortestRange, rangeWithin } from '#core/review/zoom.ts';
import { Button } from '#ui/shared/button.tsx';

interface PictureBrushProps {
  readonly picture: Picture;
  readonly range: DateRange;
  readonly onRange: (range: DateRange) => void;
  readonly address: string;
}

/** The steps of the load, small, over the whole time; 100 wide and 24 high. */
const stripPath = (picture: Picture, x: (day: Day) => number): string =>
  picture.stairs
    .map((stair) =>
      stair
        .map(({ day, value }, place) => {
          const y = 23 - ((value ?? 0) / picture.loadTop) * 22;
          return place === 0 ? `M${x(day)} ${y}` : `H${x(day)}V${y}`;
        })
        .join(''),
    )
    .join('');

const Strip = ({ picture, range }: Pick<PictureBrushProps, 'picture' | 'range'>) => {
  const span = daysBetween(picture.since, picture.today);
  const x = (day: Day) => (daysBetween(picture.since, day) / span) * 100;
  return (
    <svg className="brush-strip" viewBox="0 0 100 24" preserveAspectRatio="none" aria-hidden="true">
      <rect
        className="brush-chosen"
        x={x(range.from)}
        width={x(range.to) - x(range.from)}
        y={0}
        height={24}
      />
      <path className="brush-stair" d={stripPath(picture, x)} />
      {picture.markers
        .filter((marker) => marker.word === 'pause' || marker.word === 'ease-back')
        .map((marker) => (
          <line key={marker.id} className="brush-gate" x1={x(marker.day)} x2={x(marker.day)} y1={0} y2={24} />
        ))}
    </svg>
  );
};

const ends = { from: 'First day shown', to: 'Last day shown' } as const;

export const PictureBrush = ({ picture, range, onRange, address }: PictureBrushProps) => {
  const span = daysBetween(picture.since, picture.today);
  if (span <= shortestRange) return null;
  const isWhole = range.from === picture.since && range.to === picture.today;
  const words = `${dayInWords(range.from, picture.today)} to ${dayInWords(range.to, picture.today)}, ${counted(daysBetween(range.from, range.to), 'day')}`;
  return (
    <fieldset className="brush screen-only">
      <legend>Look closer: {words}</legend>
      <div className="brush-track">
        <Strip picture={picture} range={range} />
        {(['from', 'to'] as const).map((end) => (
          <input
            key={end}
            type="range"
            className="brush-handle"
            aria-label={ends[end]}
            aria-valuetext={dayInWords(range[end])}
            min={0}
            max={span}
            value={daysBetween(picture.since, range[end])}
            onChange={(event) => {
              const day = addDays(picture.since, Number(event.target.value));
              onRange(rangeWithin(picture, { ...range, [end]: day }, end));
            }}
          />
        ))}
      </div>
      {isWhole ? null : (
        <div className="row">
          <Button tone="quiet" onClick={() => onRange({ from: picture.since, to: picture.today })}>
            Show the whole time
          </Button>
          <a href={`${address}&from=${range.from}&to=${range.to}`}>Words and table of these days alone</a>
        </div>
      )}
    </fieldset>
  );
};
