/**
 * One limb against the other, by the newest measurement of each side. The error of a difference between sides is
 * that of two measurements, as it is between two days; where none is known the difference is shown and not judged.
 * Which side was operated on is named where a protocol says it; which is the sound one nobody says, and no share is
 * called enough.
 */
import type { Side } from '#core/exercises/joints.ts';
import { figure as plainFigure } from '#core/review/plain-words.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import { exceeds } from '../change/change-beyond-error.ts';
import type { Measurement } from '../measurements/measurement.ts';
import type { AnyMeasure } from '../measures/measure.ts';
import { measures } from '../measures/registry.ts';
import type { Figure } from './drawn.ts';
import { amount, signed } from './judgement.ts';
import { type OperatedSide, type Operation, operatedSide } from './operated.ts';
import type { SidesOf } from './sides-of.ts';

/** Further apart in time, one side may have changed meanwhile; a choice of this project. */
const mostDaysApart = 28;

interface OneSide {
  readonly day: Day;
  readonly text: string;
}

export interface SideLine {
  readonly key: string;
  readonly kind: Measurement['kind'];
  readonly title: string;
  readonly left: OneSide;
  readonly right: OneSide;
  readonly sentence: string;
  readonly verdict: 'differ' | 'within-error' | 'not-judged';
  /** Operated on or injured; null where no protocol names one side of the limb. */
  readonly operated: OperatedSide | null;
}

type Row = Measurement & { readonly day: Day };
type Said = Pick<SideLine, 'sentence' | 'verdict'>;

const spread = ({ low, high }: Exclude<Figure, number>, unit: string): string =>
  `${amount(low)} to ${amount(high)}${unit}`;

/** Ranges of estimates: apart or not, and nothing of how far. */
const ofRanges = (left: Figure, right: Figure): Said => {
  if (typeof left === 'number' || typeof right === 'number')
    return { sentence: 'Not compared.', verdict: 'not-judged' };
  const isApart = left.low > right.high || right.low > left.high;
  return isApart
    ? {
        sentence: `The ranges of estimates lie apart: ${left.low > right.high ? 'left' : 'right'} is stronger. The error of the test from day to day is not known.`,
        verdict: 'differ',
      }
    : { sentence: 'The ranges of estimates overlap: no difference is called.', verdict: 'within-error' };
};

/** "Right is 80 % of left", the lower side first; nothing of figures that have no zero of their own. */
const shareInWords = (left: number, right: number, isRatio: boolean): string => {
  if (!isRatio || left === right || Math.min(left, right) <= 0) return '';
  const [lower, higher] = left < right ? ['Left', 'right'] : ['Right', 'left'];
  const share = (100 * Math.min(left, right)) / Math.max(left, right);
  return ` ${lower} is ${Math.round(share)} % of ${higher}.`;
};

const ofFigures = (left: number, right: number, how: SidesOf<never>): Said => {
  const difference = right - left;
  const told = `Right less left: ${signed(difference)}${how.unit}.${shareInWords(left, right, how.isRatio)}`;
  if (how.error === null)
    return {
      sentence: `${told} The error of measuring is not known, so this is not judged.`,
      verdict: 'not-judged',
    };
  const isBeyond = exceeds(Math.abs(difference), how.error.figure);
  return {
    sentence: `${told} ${isBeyond ? 'Beyond' : 'Within'} the error of measuring ${plainFigure(how.error.figure)}${how.unit} (${how.error.words}).`,
    verdict: isBeyond ? 'differ' : 'within-error',
  };
};

const compared = (left: Row, right: Row, how: SidesOf<Row>): Said => {
  const apart = Math.abs(daysBetween(left.day, right.day));
  if (apart > mostDaysApart)
    return {
      sentence: `Not compared: measured ${apart} days apart, at most ${mostDaysApart}. Measure both sides at one visit.`,
      verdict: 'not-judged',
    };
  const [one, other] = [how.figure(left), how.figure(right)];
  if (one === null || other === null)
    return { sentence: 'Not compared: no figure comes of one of them.', verdict: 'not-judged' };
  return typeof one === 'number' && typeof other === 'number'
    ? ofFigures(one, other, how)
    : ofRanges(one, other);
};

const linesOf = (
  { kind, title, sides, inWords, course }: AnyMeasure,
  rows: readonly Row[],
  operations: readonly Operation[],
): readonly SideLine[] => {
  if (!sides) return [];
  const how: SidesOf<Row> = sides;
  const newest = new Map<string, Map<Side, Row>>();
  for (const row of rows.filter((one) => one.kind === kind)) {
    const side = how.side(row);
    if (side === null) continue;
    const known = newest.get(how.subject(row)) ?? new Map<Side, Row>();
    newest.set(how.subject(row), known.set(side, row));
  }
  // The subject stands in the title already.
  const reading = (course && 'reading' in course ? course.reading : undefined) ?? inWords;
  const textOf = (row: Row): string => {
    const figure = how.figure(row);
    return figure !== null && typeof figure !== 'number' ? spread(figure, how.unit) : reading(row);
  };
  return [...newest].flatMap(([subject, of]) => {
    const [left, right] = [of.get('left'), of.get('right')];
    if (!left || !right) return [];
    return {
      key: `${kind} ${subject}`,
      kind: left.kind,
      title: subject ? `${title}: ${subject}` : title,
      left: { day: left.day, text: textOf(left) },
      right: { day: right.day, text: textOf(right) },
      ...compared(left, right, how),
      operated: operatedSide(left, operations),
    };
  });
};

/** Rows stand oldest first; what was measured on one side alone has no line. */
export const sideLines = (rows: readonly Row[], operations: readonly Operation[] = []): readonly SideLine[] =>
  measures.flatMap((one) => linesOf(one as AnyMeasure, rows, operations));
