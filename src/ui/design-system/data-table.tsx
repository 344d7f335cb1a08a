/** A table that scrolls in its own box, by keyboard too. Cells are text; figures align to the end. */
import type { ReactNode } from 'react';

export interface Column {
  readonly key: string;
  readonly title: ReactNode;
  readonly isNumber?: boolean;
}

interface Row {
  readonly key: string;
  /** One cell per column, in order. The first is the row's heading. */
  readonly cells: readonly ReactNode[];
}

export interface DataTableProps {
  readonly caption: string;
  readonly hidesCaption?: boolean;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Stands in place of the table when there are no rows. */
  readonly empty?: ReactNode;
}

const cellClass = (column: Column | undefined) => (column?.isNumber ? 'number' : undefined);

export const DataTable = ({ caption, hidesCaption, columns, rows, empty }: DataTableProps) =>
  rows.length === 0 && empty ? (
    <p className="soft">{empty}</p>
  ) : (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard.
    <section className="table-scroll" aria-label={caption} tabIndex={0}>
      <table className="table">
        <caption>{hidesCaption ? <span className="visually-hidden">{caption}</span> : caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col" className={cellClass(column)}>
                {column.title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              {row.cells.map((cell, index) =>
                index === 0 ? (
                  <th key={columns[index]?.key ?? index} scope="row" className={cellClass(columns[index])}>
                    {cell}
                  </th>
                ) : (
                  <td key={columns[index]?.key ?? index} className={cellClass(columns[index])}>
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
