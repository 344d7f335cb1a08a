'use client';
/** Decisions as gates between load and pain. One stop for Tab; arrow keys go from gate to gate. */
import { type KeyboardEvent, useRef, useState } from 'react';
import { dayInWords } from '#core/review/plain-words.ts';
import type { DecisionMarker, ReviewChart } from '#core/review/review-chart.ts';
import { say } from '#messages/en/staff/review.ts';
import { decisionStatus } from '#ui/clinician/words.ts';
import { shapes } from '#ui/design-system/mark.tsx';
import { markersWithRoom, type Scale } from './chart-scale.ts';

const glyph = 16;

/** What a gate says when it is reached. */
export const markerName = (marker: DecisionMarker, today: string): string => {
  const word = decisionStatus[marker.word].word;
  const day = dayInWords(marker.day, today);
  return marker.count === 1
    ? `${day}: ${word}`
    : say('marker.run', {
        first: day,
        last: dayInWords(marker.lastDay, today),
        decision: word,
        count: marker.count,
      });
};

const moves: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowRight: (at, last) => Math.min(at + 1, last),
  ArrowLeft: (at) => Math.max(at - 1, 0),
  Home: () => 0,
  End: (_at, last) => last,
};

const MarkerShape = ({
  marker,
  scale,
  hasRoom,
}: {
  marker: DecisionMarker;
  scale: Scale;
  hasRoom: boolean;
}) => {
  const x = scale.x(marker.day);
  const { lane } = scale;
  return (
    <>
      <line className="chart-marker" x1={x} x2={x} y1={lane - 5} y2={lane + 5} />
      {hasRoom ? (
        <g transform={`translate(${x - glyph / 2} ${lane - glyph / 2}) scale(${glyph / 24})`}>
          <circle className="chart-marker-background" cx="12" cy="12" r="15" />
          <path
            className={`chart-glyph chart-glyph-${marker.word}`}
            d={shapes[decisionStatus[marker.word].shape]}
          />
        </g>
      ) : null}
      <rect className="chart-marker-target" x={x - 9} y={lane - 14} width={18} height={28} />
    </>
  );
};

export const DecisionMarkers = (props: {
  readonly chart: ReviewChart;
  readonly scale: Scale;
  readonly onSelect: (marker: DecisionMarker) => void;
  readonly hrefOf: (decisionId: string) => string;
}) => {
  const { markers, today } = props.chart;
  const [at, setAt] = useState(Math.max(0, markers.length - 1));
  const group = useRef<SVGGElement>(null);
  const roomy = markersWithRoom(markers, props.scale.x, glyph + 2);
  const onKeyDown = (event: KeyboardEvent) => {
    const next = moves[event.key]?.(at, markers.length - 1);
    if (next === undefined) return;
    event.preventDefault();
    setAt(next);
    group.current?.querySelectorAll<SVGAElement>('a')[next]?.focus();
  };
  return (
    <g ref={group}>
      {markers.map((marker, place) => (
        <a
          key={marker.id}
          className="chart-marker-link"
          href={props.hrefOf(marker.id)}
          tabIndex={place === Math.min(at, markers.length - 1) ? 0 : -1}
          aria-label={`${markerName(marker, today)}. ${marker.reasons.join(' ')}`}
          onKeyDown={onKeyDown}
          onFocus={() => {
            setAt(place);
            props.onSelect(marker);
          }}
          onPointerEnter={() => props.onSelect(marker)}
        >
          <MarkerShape marker={marker} scale={props.scale} hasRoom={roomy.has(marker.id)} />
        </a>
      ))}
    </g>
  );
};
