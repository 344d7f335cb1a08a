/** A cell of a file as what its column holds; what it is not is told with how to write it. */
import { type Joint, joints } from '#core/exercises/joints.ts';
import { type Day, isDay } from '#core/time/day.ts';
import { unguarded } from '../../csv/cells.ts';
import type { DayForm, Decimal, Marks } from './how.ts';

export type CellKind =
  | { readonly is: 'day' }
  | { readonly is: 'joint' }
  | { readonly is: 'text'; readonly most: number }
  | { readonly is: 'number' | 'whole'; readonly low: number; readonly high: number; readonly unit: string };

export type CellValue = string | number;

/** Written with what is wrong; null where the cell holds what it should. */
type Told = { readonly value: CellValue } | { readonly write: string };

interface Read {
  readonly today: Day;
  readonly born: Day;
  readonly marks: Pick<Marks, 'days' | 'decimal'>;
}

const orders: Readonly<Record<DayForm, readonly [RegExp, year: number, month: number, day: number]>> = {
  'YYYY-MM-DD': [/^(\d{4})-(\d{2})-(\d{2})$/, 1, 2, 3],
  'DD.MM.YYYY': [/^(\d{1,2})\.(\d{1,2})\.(\d{4})$/, 3, 2, 1],
  'DD/MM/YYYY': [/^(\d{1,2})\/(\d{1,2})\/(\d{4})$/, 3, 2, 1],
  'MM/DD/YYYY': [/^(\d{1,2})\/(\d{1,2})\/(\d{4})$/, 3, 1, 2],
};

const dayIn = (text: string, { today, born, marks }: Read): Told => {
  const [form, ...places] = orders[marks.days];
  const parts = form.exec(text);
  const [year = '', month = '', day = ''] = places.map((place) => parts?.[place] ?? '');
  const read = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  if (!parts || !isDay(read)) return { write: `A day that exists, written ${marks.days}.` };
  if (read > today) return { write: `A day no later than today, ${today}.` };
  return read < born ? { write: `A day no earlier than the birth of the person, ${born}.` } : { value: read };
};

const shapes: Readonly<Record<Decimal, RegExp>> = { point: /^-?\d+(\.\d+)?$/, comma: /^-?\d+(,\d+)?$/ };

type NumberKind = Extract<CellKind, { readonly low: number }>;

const numberIn = (text: string, { is, low, high, unit }: NumberKind, { marks }: Read): Told => {
  const what = `A ${is === 'whole' ? 'whole number' : 'number'} from ${low} to ${high}${unit}`;
  const value = Number(text.replace(',', '.'));
  if (!shapes[marks.decimal].test(text)) {
    const other = marks.decimal === 'point' ? 'comma' : 'point';
    const hint = shapes[other].test(text) ? `, or say that decimals are written with a ${other}` : '';
    return { write: `${what}, without marks between thousands${hint}.` };
  }
  const fits = value >= low && value <= high && (is === 'number' || Number.isInteger(value));
  return fits ? { value } : { write: `${what}.` };
};

const known: ReadonlySet<string> = new Set(joints);
const isJoint = (text: string): text is Joint => known.has(text);

const jointIn = (text: string): Told => {
  const written = text.toLowerCase().replaceAll(/[\s_]+/g, '-');
  return isJoint(written) ? { value: written } : { write: `One of ${joints.join(', ')}.` };
};

const textIn = (text: string, most: number): Told =>
  text.length <= most ? { value: unguarded(text) } : { write: `At most ${most} characters.` };

export type CellRead = Told | null;

/** Null = the cell is empty, which is not answered and never zero. */
export const cellIn = (cell: string, kind: CellKind, read: Read): CellRead => {
  const text = cell.trim();
  if (text === '') return null;
  // A line end or a tab inside a text is none of a day or a figure either.
  if (/\p{Cc}/u.test(text)) return { write: 'The same without line ends and without what cannot be seen.' };
  if (kind.is === 'day') return dayIn(text, read);
  if (kind.is === 'joint') return jointIn(text);
  return kind.is === 'text' ? textIn(text, kind.most) : numberIn(text, kind, read);
};
