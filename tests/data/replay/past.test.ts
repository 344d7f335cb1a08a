/** The file as it was, put before a connection as views: every table says when its rows came, and none is written. */
import { describe, expect, it } from 'vitest';
import { inThePast } from '#data/replay/past/in-the-past.ts';
import { arrivalOf, tablesOfFile } from '#data/replay/past/past-views.ts';
import { decision, patientIdentity } from '#data/schema/schema.ts';
import { twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

describe('the file as it was', () => {
  it('is never written', async () => {
    const store = freshStore();
    const { clinician } = await twoClinics(store);
    await inThePast(clinician, clinician.now, async (past) => {
      await expect(past.store.write(async () => undefined)).rejects.toThrow(/never written/);
      for (const table of [decision, patientIdentity])
        expect(() => past.store.read.delete(table).run()).toThrow(/view/);
    });
    store.close();
  });

  it('knows of every table when its rows came', () => {
    const unsaid = [...tablesOfFile].filter(([table, columns]) => arrivalOf(table, columns) === null);
    expect(unsaid).toEqual([]);
    const of = (arrival: string) =>
      [...tablesOfFile]
        .filter(([table, columns]) => arrivalOf(table, columns) === arrival)
        .map(([name]) => name);
    expect(of('whole')).toEqual(['decision_settings']);
    expect(of('at')).toEqual([]);
  });
});
