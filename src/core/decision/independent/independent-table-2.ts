/**
 * The second statement of version 2 of the table, from its published wording: the rows that changed and the
 * new ones, plain; every other row is that of version 1. Shares no code with the engine.
 */
import {
  answersOf,
  jointRows,
  over,
  painRows,
  type Row,
  type Second,
  workRows,
} from './independent-table.ts';

// biome-ignore lint/suspicious/noExplicitAny: the second statement borrows no type from the first.
type Plain = any;

const ORDER =
  'R1 P1 P1x P2 P3 P3b P4 P5 P5h P5r P6 P6h P7 P7h B0 B0r B1 B2 B3 W3 W2 W1s S1 S2 S2f S3 T1 T2 F1 F1i F2 W1 C1 C2 C3 C4 A1 A2 M1 M1r X1 D1 D2 D3 D4';
export const statedRules: ReadonlySet<string> = new Set(ORDER.split(' '));
const SILENT_WHILE_USUAL_IS_NULL = 'P3b P5 P5h P5r P6 P6h P7 P7h'.split(' ');

const changedRows = (f: Plain, peak: number, B: number, U: number): Row[] => {
  const next = f.painNextMorning;
  const later = f.painLaterMorning;
  const spoke = typeof later === 'number';
  const others = [f.painBefore, f.painDuring, f.painAfter, f.painTwoHours, f.swelling];
  others.push(f.stiffnessMinutes, f.redFlags, f.repetitionsDonePercent);
  const morning = (item: number): boolean => over(next, item) || over(later, item);
  return [
    ['P1', peak >= 8, 1, 2, f.usualPain !== null && peak - B < 2 ? 2 : 1],
    [
      'P1x',
      peak === 10 ||
        (peak >= 9 && peak - B >= 3) ||
        (morning(8) && morning(B + 2)) ||
        (peak >= 8 && f.previousPeakEight && peak - B >= 2),
      0,
      0,
      1,
    ],
    ['P5', morning(U + 3) || (morning(U + 2) && f.twoOverBefore), 1, 3, 3],
    ['P5h', morning(U + 1), 2, 3, 3],
    ['P5r', f.morningsOverTop >= 5, 2, 3, 2],
    ['B0r', f.usualPainProvisional, 3, 3, 3],
    ['B3', f.usualPainRise !== null && f.usualPainRise >= 2, 2, 3, 2],
    ['F1', f.flareDays >= 8 && !f.inflammatoryArthritis, 1, 2, 2],
    ['M1', others.some((one) => one === null) || (next === null && !spoke), 2, 3, 3],
    ['M1r', next === null && spoke, 3, 3, 3],
  ];
};

/** The rows in the order of the table, and the top of usual pain they were worked out with. */
export const rowsOf2 = (f: Plain) => {
  const scores = [f.painBefore, f.painDuring, f.painAfter, f.painTwoHours, f.painNextMorning];
  scores.push(f.painLaterMorning);
  const peak = Math.max(-1, ...scores.filter((score) => typeof score === 'number'));
  const B = f.usualPain === null ? 0 : f.usualPain;
  const U = f.usualPain === null ? 0 : f.usualPainTop === null ? B : f.usualPainTop;
  const rows = new Map<string, Row>();
  for (const row of [...painRows(f, peak, B, U), ...jointRows(f), ...workRows(f)]) rows.set(row[0], row);
  for (const row of changedRows(f, peak, B, U)) rows.set(row[0], row);
  if (f.usualPain === null) for (const id of SILENT_WHILE_USUAL_IS_NULL) rows.delete(id);
  const inOrder = ORDER.split(' ').flatMap((id) => (rows.has(id) ? [rows.get(id)!] : []));
  const onlyRepetitions =
    f.sessionsOnTarget === 1 || rows.get('B0r')![1] || rows.get('M1r')![1] ? 'repetitions' : 'load';
  return { rows: inOrder, onlyRepetitions, U } as const;
};

export const secondStatement2 = (f: Plain): Second => {
  const { rows, onlyRepetitions } = rowsOf2(f);
  return answersOf(rows, onlyRepetitions);
};
