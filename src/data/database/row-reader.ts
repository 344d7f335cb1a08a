/**
 * How a query that the builder put together is bound and its rows are read, worked out once for each query. The
 * builder works it out anew for each cell of each row it hands over, which costs more than reading the cell.
 */
import { Column, fillPlaceholders, is, Param, Placeholder, SQL } from 'drizzle-orm';

/** What the query builder prepared: its text, what it is asked with, and its columns. */
export interface PreparedQuery {
  readonly getQuery: () => { readonly sql: string; readonly params: unknown[] };
  readonly fields: readonly { readonly field: object; readonly path: readonly string[] }[];
}

type Values = Readonly<Record<string, unknown>>;

type Bind = (values: Values) => readonly unknown[];

/** The values a query is asked with, in the order of its text. */
export const binderOf = (params: readonly unknown[]): Bind => {
  const isFixed = (param: unknown) => !is(param, Placeholder) && !is(param, Param);
  const open = params.flatMap((param, place) => (isFixed(param) ? [] : [{ param, place }]));
  const filled = open.map(({ param }) => param);
  return (values) => {
    const bound = [...params];
    const given = fillPlaceholders(filled, values as Record<string, unknown>);
    for (const [number, { place }] of open.entries()) bound[place] = given[number];
    return bound;
  };
};

interface Decoder {
  readonly mapFromDriverValue: (value: unknown) => unknown;
}

const decoderOf = (field: object): Decoder | null => {
  if (is(field, Column)) return field as unknown as Decoder;
  return is(field, SQL) ? (field as unknown as { readonly decoder: Decoder }).decoder : null;
};

/** Reads one row whose cells each have a name; null where a row holds more than that, such as a joined table as a whole. */
export const rowReaderOf = (
  fields: PreparedQuery['fields'],
): ((row: readonly unknown[]) => unknown) | null => {
  const cells = fields.flatMap(({ field, path: [name, ...within] }) => {
    const decoder = decoderOf(field);
    return decoder && name !== undefined && within.length === 0 ? [{ name, decoder }] : [];
  });
  if (cells.length < fields.length) return null;
  return (row) => {
    const read: Record<string, unknown> = {};
    for (let place = 0; place < cells.length; place++) {
      const { name, decoder } = cells[place]!;
      const cell = row[place];
      read[name] = cell === null ? null : decoder.mapFromDriverValue(cell);
    }
    return read;
  };
};
