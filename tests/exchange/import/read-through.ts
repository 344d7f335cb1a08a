/** A file read through in memory, as the command and the page do. */
import type { CsvAsked } from '#exchange/import/csv/read-csv.ts';
import { type Asked, type Prepared, prepareImport, type Whose } from '#exchange/import/prepare.ts';
import type { Bytes, Fault } from '#exchange/import/source.ts';

export const whose: Whose = {
  patient: { id: 'person', birthDay: '1958-06-01', familyName: 'Person' },
  clinic: { zone: 'Europe/Lisbon' },
  today: '2026-03-02',
};

export const asTable: { readonly format: 'csv' } & CsvAsked = {
  ...{ format: 'csv', kind: 'mornings', separator: 'comma', encoding: 'utf-8', days: 'YYYY-MM-DD' },
  ...{ decimal: 'point', map: '' },
};

export const bytesOf = (content: string | Uint8Array): Bytes => {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  return async function* () {
    yield bytes;
  };
};

export interface ReadThrough extends Prepared {
  readonly faults: readonly Fault[];
}

export const readThrough = async (
  content: string | Uint8Array | Bytes,
  asked: Partial<CsvAsked> | Asked = {},
  of: Whose = whose,
): Promise<ReadThrough> => {
  const faults: Fault[] = [];
  const bytes = typeof content === 'function' ? content : bytesOf(content);
  const how = 'format' in asked ? asked : { ...asTable, ...asked };
  const prepared = await prepareImport({ name: 'file', bytes }, how as Asked, of, {
    onFault: (fault) => faults.push(fault),
  });
  return { ...prepared, faults };
};

export const thingsIn = async ({ source }: Pick<Prepared, 'source'>) => {
  const found = [];
  for await (const piece of source.read()) found.push(...piece.flatMap(({ things }) => things));
  return found;
};
