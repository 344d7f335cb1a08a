/** The days of all pictures below it, with what was signed on them; what would stand on another is left to the table. */

import type { DoseDay } from '#core/review/dose-days.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { type Span, width, xOf } from './line-scale.ts';

interface Label {
  readonly day: Day;
  readonly what: string;
  readonly x: number;
}

/** The widest label beside another; a step in many letters is told by the table. */
const roomForLabel = 84;
const mostLetters = 14;

const stepsInShort = (steps: readonly string[]): string => {
  const [first = ''] = steps;
  return steps.length === 1 && first.length <= mostLetters
    ? first.replace(/^× (.*)$/, (_, count) => say('picture.repetitions', { count }))
    : say('picture.doses', { count: steps.length });
};

const labelsOf = (span: Span, doses: readonly DoseDay[], day: Day): readonly Label[] => {
  const x = xOf(span);
  const all: readonly Label[] = [
    { day: span.from, what: '', x: x(span.from) },
    { day, what: '', x: x(day) },
    ...doses
      .filter(({ isSigned }) => isSigned)
      .map(({ day: on, steps }) => ({ day: on, what: stepsInShort(steps), x: x(on) })),
  ];
  const kept: Label[] = [];
  // The newest first: what stands now is named before what stood.
  for (const label of all.toReversed())
    if (kept.every((other) => Math.abs(other.x - label.x) >= roomForLabel)) kept.push(label);
  return kept;
};

const anchorOf = (x: number): 'start' | 'middle' | 'end' =>
  x < 80 ? 'start' : x > width - 60 ? 'end' : 'middle';

export const TimeAxis = ({
  span,
  doses,
  day,
}: {
  readonly span: Span;
  readonly doses: readonly DoseDay[];
  readonly day: Day;
}) => (
  <svg className="line-picture" viewBox={`0 0 ${width} 32`} aria-hidden="true" focusable="false">
    {labelsOf(span, doses, day).map((label) => (
      <g key={label.day} textAnchor={anchorOf(label.x)}>
        <text className="line-tick" x={label.x} y={12}>
          {dayInWords(label.day, day)}
        </text>
        <text className="line-step" x={label.x} y={27}>
          {label.what}
        </text>
      </g>
    ))}
  </svg>
);
