/** The table a person reads. */
import { arch, cpus, platform, totalmem } from 'node:os';
import { isMissed, type Measured, rounded } from './part.ts';

export interface Told {
  readonly measured: readonly Measured[];
  /** Highest memory of the process of each part, MB. */
  readonly peakMb: Readonly<Record<string, number>>;
}

const machine = (): string => {
  const { model } = cpus()[0] ?? { model: 'unknown processor' };
  const memory = Math.round(totalmem() / 2 ** 30);
  return `${cpus().length} × ${model.trim()}, ${memory} GiB, ${platform()} ${arch()}, Node ${process.versions.node}`;
};

const verdict = (row: Measured): string => {
  if (row.skipped) return 'skipped';
  if (isMissed(row)) return 'MISSED';
  return row.bar === null ? '' : 'kept';
};

const ratioText = ({ paired }: Measured): string => (paired ? paired.ratio.toFixed(2) : '');
const rangeText = ({ paired }: Measured): string =>
  paired && paired.pairs > 1 ? `${paired.low.toFixed(2)}–${paired.high.toFixed(2)}` : '';

const figuresText = ({ figures, paired, skipped }: Measured): string =>
  [
    ...(skipped ? [skipped] : []),
    ...Object.entries(figures).map(([name, value]) => `${name} ${value}`),
    ...(paired && paired.pairs > 1 ? [`${paired.pairs} pairs`] : []),
  ].join(', ');

const inColumns = (rows: readonly (readonly string[])[]): string => {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column]!))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
};

export const tableOf = ({ measured, peakMb }: Told): string => {
  const head = ['measured', 'ratio', '95 % interval', 'bar', '', 'peak MB'];
  const rows = measured.map((row) => [
    row.title,
    ratioText(row),
    rangeText(row),
    row.bar === null ? '' : `≤ ${row.bar}`,
    verdict(row),
    peakMb[row.part] === undefined ? '' : String(peakMb[row.part]),
  ]);
  const details = measured.map((row) => `${row.title}: ${figuresText(row)}`);
  return [machine(), '', inColumns([head, ...rows]), '', ...details].join('\n');
};

export const lastLine = ({ measured }: Told): string => {
  const missed = measured.filter(isMissed);
  const held = measured.filter((row) => row.bar !== null && row.paired && !isMissed(row)).length;
  const skipped = measured.filter((row) => row.skipped).length;
  const names = missed.map((row) => `${row.title}${row.paired ? ` (${rounded(row.paired.ratio)})` : ''}`);
  const tail = missed.length > 0 ? `: ${names.join('; ')}` : '';
  return `${held} bars kept, ${missed.length} missed, ${skipped} skipped${tail}`;
};

export const jsonOf = (told: Told, at: string): string =>
  `${JSON.stringify(
    {
      machine: machine(),
      at,
      measured: told.measured.map((row) => ({ ...row, missed: isMissed(row) })),
      peakMb: told.peakMb,
    },
    null,
    2,
  )}\n`;
