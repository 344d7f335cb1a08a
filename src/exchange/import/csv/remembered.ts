/** Days, joints and scores come again and again; reading each text once makes a long file quick. */
import type { CellRead } from './cells.ts';

const mostRemembered = 10_000;

/** Of a text of one to three digits its number, without a text to look up; -1 of every other. */
const smallNumber = (cell: string): number => {
  const { length } = cell;
  if (length === 0 || length > 3) return -1;
  let number = 0;
  for (let at = 0; at < length; at += 1) {
    const digit = cell.charCodeAt(at) - 48;
    // "07" is another text than "7".
    if (digit < 0 || digit > 9 || (digit === 0 && at === 0 && length > 1)) return -1;
    number = number * 10 + digit;
  }
  return number;
};

export const remembered = (read: (cell: string) => CellRead): ((cell: string) => CellRead) => {
  const small: (CellRead | undefined)[] = [];
  const known = new Map<string, CellRead>();
  let last = '';
  let lastRead: CellRead = null;
  const lookUp = (cell: string): CellRead => {
    const before = known.get(cell);
    if (before !== undefined) return before;
    const now = read(cell);
    if (known.size >= mostRemembered) known.clear();
    known.set(cell, now);
    return now;
  };
  return (cell) => {
    const number = smallNumber(cell);
    if (number >= 0) {
      small[number] ??= read(cell);
      return small[number] as CellRead;
    }
    if (cell !== last) {
      lastRead = lookUp(cell);
      last = cell;
    }
    return lastRead;
  };
};
