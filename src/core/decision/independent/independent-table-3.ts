/**
 * The second statement of the table with the choices of version 3: one row differs from version 2. Pain before the
 * session swaps it from 5 on and 2 over the top of usual pain, and says nothing of the session after it once the
 * work is known. Shares no code with the engine.
 */
import { answersOf, over, type Row, type Second } from './independent-table.ts';
import { rowsOf2 } from './independent-table-2.ts';

// biome-ignore lint/suspicious/noExplicitAny: the second statement borrows no type from the first.
type Plain = any;

export const secondStatement3 = (f: Plain): Second => {
  const { rows, onlyRepetitions, U } = rowsOf2(f);
  const todayLeft = f.repetitionsDonePercent === null ? 2 : 3;
  const p3: Row = ['P3', over(f.painBefore, Math.max(5, U + 2)), 2, todayLeft, 3];
  return answersOf(
    rows.map((row) => (row[0] === 'P3' ? p3 : row)),
    onlyRepetitions,
  );
};
