/** Where the rows of the tally stand: at their dose on the scale of the picture beside it, moved apart where doses lie close. */
import type { LoadRange } from '#core/review/chart-steps.ts';
import type { DoseAnswers, DoseCorridor } from '#core/review/dose/corridor.ts';
import { headHeight, loadFoot, loadY } from '../chart/chart-scale.ts';

const rowHeight = 15;
/** From the middle of a row to a line over or under it. */
const lineFrom = 8;
/** More between the two doses of the corridor, for its ground. */
const corridorHeight = 18;
const top = headHeight + rowHeight / 2;
/** Down to the foot of the decisions: they have no row beside them. */
const bottom = loadFoot + 36;
export const mostRows = Math.floor((bottom - top - corridorHeight) / rowHeight) + 1;

export interface TallyRow extends DoseAnswers {
  readonly y: number;
}

/** Highest dose first. Rows keep their order and stand at least `apart` from the one above. */
const movedApart = (wanted: readonly number[], apart: readonly number[]): readonly number[] => {
  const ys = [...wanted];
  for (let row = 0; row < ys.length; row++)
    ys[row] = Math.max(ys[row]!, row === 0 ? top : ys[row - 1]! + apart[row]!);
  for (let row = ys.length - 1; row >= 0; row--)
    ys[row] = Math.min(ys[row]!, row === ys.length - 1 ? bottom : ys[row + 1]! - apart[row + 1]!);
  return ys;
};

const isOf = (row: DoseAnswers, other: DoseAnswers | null): boolean => row.share === other?.share;

/** The highest doses as far as there is room; `lower` are left to the words. */
export const tallyRows = (
  doses: readonly DoseAnswers[],
  corridor: DoseCorridor,
  range: LoadRange,
): { readonly rows: readonly TallyRow[]; readonly lower: number } => {
  const shown = doses.toReversed().slice(0, mostRows);
  const hasCorridor = corridor.noneBecause === null;
  const apart = shown.map((row) =>
    hasCorridor && isOf(row, corridor.highestAtUsual) ? rowHeight + corridorHeight : rowHeight,
  );
  const ys = movedApart(
    shown.map(({ share }) => loadY(range)(share)),
    apart,
  );
  return {
    rows: shown.map((row, place) => ({ ...row, y: ys[place]! })),
    lower: doses.length - shown.length,
  };
};

/** The lines of the tally: over the highest dose at usual, under the lowest over it; null where there is none. */
export const corridorLines = (rows: readonly TallyRow[], corridor: DoseCorridor) => {
  const at = (of: DoseAnswers | null) => rows.find((row) => isOf(row, of))?.y ?? null;
  const [highest, lowest] = [at(corridor.highestAtUsual), at(corridor.lowestOverUsual)];
  return {
    solid: highest === null ? null : highest - lineFrom,
    dashed: lowest === null ? null : lowest + lineFrom,
  };
};
