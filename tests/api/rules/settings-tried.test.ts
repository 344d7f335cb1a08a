/** Settings of the engine tried on invented people: one of each type here, so that a run takes little time. */
import { expect, it } from 'vitest';
import { engineDefaults } from '#core/decision/settings.ts';
import { keptRowOf } from '#simulation/kept/kept-row.ts';
import { keptSettings, keptTrial } from '#simulation/kept/kept-trial.ts';
import { engineArms } from '#simulation/trial/arms/engine.ts';
import { trialRows } from '#simulation/trial/trial.ts';
import { asClinician } from '#tests/support/callers.ts';
import { twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

it('stand beside those of the clinic, on the same people', async () => {
  const store = await freshStore();
  const { clinician } = await twoClinics(store);
  const people = asClinician(clinician).clinician.inventedPeople;
  const { now, tried, ...of } = await people.trySettings({ moved: { 'severe-pain': 7 }, people: 1 });
  const rowsUnder = (more: Partial<typeof engineDefaults>) => {
    const arm = engineArms({ ...engineDefaults, ...more })[1]!;
    const rows = trialRows(arm, { ...keptSettings(keptTrial.run), people: 1 }).map(keptRowOf);
    return rows.map(([, type, , badDays, , , finalDose]) => [type, badDays, finalDose]);
  };
  const figures = (rows: typeof now) => rows.map((row) => [row.type, row.badDays, row.finalDose]);
  expect(figures(now)).toEqual(rowsUnder({}));
  expect(figures(tried)).toEqual(rowsUnder({ 'severe-pain': 7 }));
  expect(figures(tried)).not.toEqual(figures(now));
  expect(of).toEqual({ people: 1, weeks: 12 });
  store.close();
});
