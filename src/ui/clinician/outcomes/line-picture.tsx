/**
 * One measure over the course of care, drawn on the server: the first reading a ring, later ones dots, a range a
 * bar. The pale band is the error round the first reading; dotted lines are doses signed, short ones doses that
 * changed otherwise. It shows no more than the sentences and the table beside it say.
 */
import type { Drawn, Figure } from '#core/assessment/course/drawn.ts';
import type { DoseDay } from '#core/review/dose-days.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import {
  apart,
  errorBand,
  height,
  highOf,
  type LineScale,
  lineScale,
  lowOf,
  type Name,
  type Span,
  width,
  xOf,
} from './line-scale.ts';

interface PictureProps {
  readonly title: string;
  readonly drawn: Drawn;
  readonly span: Span;
  readonly doses: readonly DoseDay[];
}

interface Part {
  readonly drawn: Drawn;
  readonly at: LineScale;
  readonly x: (day: string) => number;
}

/** Of a dose that changed without a new signature. */
const shortFrom = height - 18;

const Behind = ({ drawn, at, x, doses }: Part & Pick<PictureProps, 'doses'>) => {
  const band = errorBand(drawn);
  const { cut } = drawn;
  return (
    <>
      {band ? (
        <rect
          className="line-error"
          x={at.left}
          y={at.y(band[1])}
          width={at.right - at.left}
          height={Math.max(0, at.y(band[0]) - at.y(band[1]))}
        />
      ) : null}
      <path
        className="line-signed"
        d={doses.map(({ day, isSigned }) => `M${x(day)} ${isSigned ? 4 : shortFrom}V${height - 6}`).join('')}
      />
      {cut ? (
        <>
          <path className="line-cut" d={`M${at.left} ${at.y(cut.at)}H${at.right}`} />
          <text className="line-cut-name" x={width - 2} y={at.y(cut.at) - 4} textAnchor="end">
            {cut.words}
          </text>
        </>
      ) : null}
    </>
  );
};

const Axis = ({ at }: Pick<Part, 'at'>) => (
  <>
    <path className="line-axis" d={`M${at.left} 8V${height - 8}`} />
    {at.ticks.map(({ at: figure, text }) => (
      <text key={text} className="line-tick" x={at.left - 6} y={at.y(figure) + 4} textAnchor="end">
        {text}
      </text>
    ))}
  </>
);

const inFigures = (figure: Figure): string =>
  typeof figure === 'number'
    ? String(Math.round(figure * 10) / 10)
    : `${Math.round(figure.low * 10) / 10}–${Math.round(figure.high * 10) / 10}`;

const middleOf = (figure: Figure): number => (lowOf(figure) + highOf(figure)) / 2;

type Course = Drawn['courses'][number];

const Readings = ({ course, at, x }: Part & { readonly course: Course }) => {
  const { points } = course;
  const places = points.map(({ day, figure }) => ({ x: x(day), y: at.y(middleOf(figure)), figure }));
  const isRange = points.some(({ figure }) => typeof figure !== 'number');
  return (
    <>
      {isRange ? null : (
        <path
          className="line-course"
          d={places.map((one, n) => `${n ? 'L' : 'M'}${one.x} ${one.y}`).join('')}
        />
      )}
      {places.map((one, place) =>
        typeof one.figure === 'number' ? (
          <circle
            key={one.x}
            className={place === 0 ? 'line-first' : 'line-later'}
            cx={one.x}
            cy={one.y}
            r={place === 0 ? 4 : 3.5}
          />
        ) : (
          <path
            key={one.x}
            className="line-range"
            d={`M${one.x} ${at.y(one.figure.low)}V${at.y(one.figure.high)}`}
          />
        ),
      )}
    </>
  );
};

/** Letters of a name that have room; it stands whole beside the picture. */
const mostLetters = 16;

const inShort = (name: string): string =>
  name.length > mostLetters ? `${name.slice(0, mostLetters - 1).trimEnd()}…` : name;

const figureText = ({ grades }: Drawn, figure: Figure): string =>
  grades ? (grades[lowOf(figure)] ?? '') : inFigures(figure);

/** The figure of the first and the newest reading; of several courses the newest alone, with its name. */
const namesOf = ({ drawn, at, x }: Part): readonly Name[] => {
  const hasNames = drawn.courses.length > 1;
  return drawn.courses.flatMap(({ name, points }) => {
    const ends = [...new Set([points[0], points.at(-1)])].filter((point) => point !== undefined);
    return (hasNames ? ends.slice(-1) : ends).map(({ day, figure }) => ({
      key: `${name} ${day}`,
      text: [figureText(drawn, figure), hasNames && name ? inShort(name) : ''].filter(Boolean).join(' '),
      x: x(day),
      y: at.y(highOf(figure)) + (hasNames ? 4 : -8),
    }));
  });
};

const Names = (part: Part) => {
  const hasNames = part.drawn.courses.length > 1;
  const names = namesOf(part);
  return (hasNames ? apart(names) : names).map(({ key, text, x, y }) => (
    <text key={key} x={x + (hasNames ? 9 : 0)} y={y} textAnchor={hasNames || x < 60 ? 'start' : 'middle'}>
      {text}
    </text>
  ));
};

export const LinePicture = ({ title, drawn, span, doses }: PictureProps) => {
  if (drawn.courses.every(({ points }) => points.length === 0)) return null;
  const part = { drawn, at: lineScale(drawn), x: xOf(span) };
  return (
    <svg
      className="line-picture"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={say('picture.of', { title })}
    >
      <Behind {...part} doses={doses} />
      <Axis at={part.at} />
      {drawn.courses.map((course) => (
        <Readings key={course.name} {...part} course={course} />
      ))}
      <Names {...part} />
    </svg>
  );
};
