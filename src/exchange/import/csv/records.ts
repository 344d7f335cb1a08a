/** Text as records of cells, read by the library piece by piece: what is in memory is one piece of the file. */
import { CsvError, parse } from 'csv-parse';
import { CannotRead } from '../source.ts';

/** Longer than any row of a diary; a quote that is never closed would take in the whole file. */
const mostCharactersOfRecord = 20_000;

const inWords: Readonly<Record<string, string>> = {
  CSV_QUOTE_NOT_CLOSED: 'a quote is opened and never closed. Close it, or write two quotes for one.',
  CSV_INVALID_CLOSING_QUOTE: 'there is a quote inside a cell. Put the cell in quotes and write two for one.',
  INVALID_OPENING_QUOTE: 'there is a quote inside a cell. Put the cell in quotes and write two for one.',
  CSV_MAX_RECORD_SIZE: `it is longer than ${mostCharactersOfRecord} characters. Look for a quote that is not closed, or say another separator.`,
};

/** The library counts the records before the one that is wrong. */
const rowOf = (error: CsvError): number => Number(error.records ?? 0) + 1;

/**
 * In the order of the file. Behind a quote that is out of place nobody knows where a row begins: the file is not read
 * on, or rows would be lost and the ones after it counted wrong.
 */
export async function* recordsOf(
  text: AsyncIterable<string>,
  delimiter: string,
): AsyncIterable<readonly (readonly string[])[]> {
  let records: string[][] = [];
  let failed: unknown = null;
  const parser = parse({ delimiter, relax_column_count: true, max_record_size: mostCharactersOfRecord });
  parser.on('data', (record: string[]) => {
    records.push(record);
  });
  parser.on('error', (error) => {
    failed = error;
  });
  const taken = (): readonly string[][] => {
    const found = records;
    records = [];
    if (failed instanceof CsvError)
      throw new CannotRead(
        `Row ${rowOf(failed)}: ${inWords[failed.code] ?? 'it cannot be parted into cells.'}`,
      );
    if (failed) throw failed;
    return found;
  };
  for await (const piece of text) {
    await new Promise<void>((done) => parser.write(piece, () => done()));
    yield taken();
  }
  await new Promise<void>((done) => {
    parser.once('end', done);
    parser.once('error', () => done());
    parser.end();
  });
  yield taken();
}
