/** What is said beside the tables, in the language of whoever has them. */
import { describe, expect, it } from 'vitest';
import { leftOut } from '#data/patients/record-tables.ts';
import { readMe } from '#exchange/csv/person-csv.ts';
import { notOfTheRecord } from '#exchange/csv/tables.ts';

const notInIt = { ...leftOut, ...notOfTheRecord };

describe('the read-me of the tables', () => {
  it('names every table that is left out with its reason, as the record says it', () => {
    const text = readMe('en');
    for (const [table, why] of Object.entries(notInIt)) expect(text).toContain(`- ${table}: ${why}`);
  });

  it('is in German for whoever reads German, with every table left out', () => {
    const text = readMe('de');
    expect(text).toContain('Leer heißt nicht beantwortet');
    expect(text).not.toContain('undefined');
    const named = [...text.matchAll(/^- (\w+): \S/gm)].map(([, table]) => table);
    expect(named).toEqual(Object.keys(notInIt));
  });
});
