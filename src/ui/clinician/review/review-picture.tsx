'use client';
/** The picture with its key, a stretch of it to look at, and the words of what is under the pointer or the keyboard. */
import dynamic from 'next/dynamic';
import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import { dayFromNumber, dayNumber } from '#core/day.ts';
import type { DayDetail } from '#core/review/day-detail.ts';
import type { DecisionMarker, Picture } from '#core/review/picture.ts';
import { type DateRange, zoomed } from '#core/review/zoom.ts';
import { PictureBrush } from './picture-brush.tsx';
import { CursorDay } from './picture-cursor.tsx';
import { markerName } from './picture-gates.tsx';
import { PictureKey } from './picture-key.tsx';
import { nothingTold, PictureTold, type Told } from './picture-told.tsx';

const Chart = dynamic(() => import('./picture-chart.tsx'), {
  ssr: false,
  loading: () => <p className="soft">Drawing the picture. The words and the table state the same.</p>,
});

const ofMarker = (marker: DecisionMarker, today: string): Told => ({
  title: markerName(marker, today),
  lines: [...marker.reasons, marker.answered ?? 'No clinician has answered it.'],
  decisionId: marker.id,
  day: marker.day,
});

const ofDay = ({ text, lines, decisionId, day }: DayDetail): Told => ({
  title: text,
  lines,
  decisionId,
  day,
});

export interface ReviewPictureProps {
  readonly picture: Picture;
  /** Address of this review, to which a stretch can be added. */
  readonly address: string;
}

export const ReviewPicture = ({ picture, address }: ReviewPictureProps) => {
  const [told, setTold] = useState<Told>(nothingTold);
  const [range, setRange] = useState<DateRange>({ from: picture.since, to: picture.today });
  // A handle moves at once; the drawing follows when there is time for it.
  const drawn = useDeferredValue(range);
  const shown = useMemo(() => zoomed(picture, drawn), [picture, drawn]);
  const details = useMemo(() => new Map(shown.days.map((detail) => [detail.day, detail])), [shown]);
  const onMarker = useCallback(
    (marker: DecisionMarker) => setTold(ofMarker(marker, picture.today)),
    [picture],
  );
  const onDay = useCallback(
    (number: number) => {
      const detail = details.get(dayFromNumber(number));
      if (detail) setTold((known) => (known.title === detail.text ? known : ofDay(detail)));
    },
    [details],
  );
  return (
    <figure className="picture stack-close">
      <figcaption>
        <PictureKey picture={shown} />
      </figcaption>
      <div className="picture-box">
        <CursorDay value={told.day === null ? null : dayNumber(told.day)}>
          <Chart picture={shown} onMarker={onMarker} onDay={onDay} />
        </CursorDay>
      </div>
      <PictureBrush picture={picture} range={range} onRange={setRange} address={address} />
      <PictureTold told={told} days={shown.days} onDay={(detail) => setTold(ofDay(detail))} />
    </figure>
  );
};
