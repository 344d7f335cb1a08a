/** Exports of the demo clinic by command; they stand with the papers because both need its file, which takes a while to make. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { run as exportRecords } from '#commands/exchange/export.ts';
import { openStore } from '#data/open-store.ts';
import { otherClinicStory } from '#demo/other-clinic.ts';
import { stories } from '#demo/patients.ts';
import { faultsOfBundle, faultsOfSet } from '#exchange/fhir/walker/references.ts';
import { faultsByCodes, faultsByTypes } from '#tests/exchange/fhir/opinions.ts';
import { type Ended, runHere } from '#tests/support/command-here.ts';

interface Files {
  readonly file: string;
  readonly out: (name: string) => string;
}

const inFile = (file: string, sql: string): unknown => {
  const store = openStore(file);
  try {
    return store.reader.client.prepare(sql).get();
  } finally {
    store.close();
  }
};

const linesOf = (folder: string): readonly { readonly resourceType: string }[] =>
  readdirSync(folder).flatMap((name) =>
    readFileSync(path.join(folder, name), 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line)),
  );

const refused: readonly (readonly [string, readonly string[], string])[] = [
  ['nobody is named', ['--format', 'fhir', '--out', '/x'], 'either --patient ID or --clinic'],
  [
    'one and everybody are named',
    ['--clinic', '--patient', 'a', '--format', 'fhir', '--out', '/x'],
    'either',
  ],
  ['the format is unknown', ['--clinic', '--format', 'xml', '--out', '/x'], 'not "xml"'],
  ['it is not said where to', ['--clinic', '--format', 'fhir'], 'Missing: --out'],
  [
    'one person is to be de-identified',
    ['--patient', 'a', '--format', 'csv', '--de-identified', '--out', '/x'],
    'goes with --clinic and --format csv',
  ],
  ['an option is unknown', ['--clinic', '--fromat', 'fhir'], 'Usage'],
];

export const exportsOfDemo = ({ file, out }: Files): unknown =>
  describe('exports of the demo by command', () => {
    const asked = (...args: readonly string[]): Promise<Ended> =>
      runHere(exportRecords, args, { DATABASE_FILE: file });
    const of = (id: string, to: string) => asked('--patient', id, '--format', 'fhir', '--out', to);

    it.each([...stories, otherClinicStory].map(({ id }) => id))(
      'writes %s as a Bundle that the table of the standard and both other libraries accept',
      async (id) => {
        const to = out(`${id}.fhir.json`);
        expect(await of(id, to)).toMatchObject({ code: 0, problem: '' });
        const bundle = JSON.parse(readFileSync(to, 'utf8'));
        expect(faultsOfBundle(bundle)).toEqual([]);
        expect(faultsByCodes(bundle)).toEqual([]);
        expect(faultsByTypes(bundle)).toEqual([]);
      },
    );

    it('notes it in the audit as an opening of that record', async () => {
      await of('red-flag', out('audited.json'));
      expect(
        inFile(
          file,
          'SELECT act, subject, actor_id AS by, patient_id AS patientId FROM audit ORDER BY rowid DESC LIMIT 1',
        ),
      ).toMatchObject({ act: 'read', subject: 'export.fhir', by: 'export', patientId: 'red-flag' });
    });

    it('writes each clinic as lines that refer to nothing outside, and tells how far it is', async () => {
      const to = out('clinics');
      const ended = await asked('--clinic', '--format', 'fhir', '--out', to);
      expect(ended).toMatchObject({ code: 0, problem: expect.stringContaining('12 of 12 people') });
      for (const clinic of readdirSync(to)) expect(faultsOfSet(linesOf(path.join(to, clinic)))).toEqual([]);
      const patients = readFileSync(path.join(to, 'demo-clinic', 'Patient.ndjson'), 'utf8');
      expect(patients.trim().split('\n')).toHaveLength(stories.length);
    });

    it('writes everything of one person as CSV with its dictionary, and of a clinic as one file a table', async () => {
      const [one, all] = [out('one-csv'), out('all-csv')];
      await asked('--patient', 'steady-progress', '--format', 'csv', '--mark', '--out', one);
      expect(readFileSync(path.join(one, 'morning.csv'), 'utf8').startsWith('\uFEFFpatientId,')).toBe(true);
      expect(readdirSync(one)).toContain('dictionary.csv');
      expect(await asked('--clinic', '--format', 'csv', '--out', all)).toMatchObject({ code: 0 });
      const rows: { patientId: string }[] = parse(
        readFileSync(path.join(all, 'demo-clinic', 'patient_identity.csv')),
        { columns: true },
      );
      expect(rows.map(({ patientId }) => patientId).sort()).toEqual(stories.map(({ id }) => id).sort());
    });

    it('writes a calendar of one person and one each of a clinic, in the language asked for', async () => {
      const [one, all] = [out('one.ics'), out('all-calendars')];
      await asked('--patient', 'steady-progress', '--format', 'calendar', '--language', 'de', '--out', one);
      const calendar = new ICAL.Component(ICAL.parse(readFileSync(one, 'utf8')));
      const events = calendar.getAllSubcomponents('vevent').map((part) => new ICAL.Event(part).summary);
      expect(new Set(events)).toEqual(new Set(['Fragen am Morgen', 'Übungen', 'Termin in der Praxis']));
      await asked('--clinic', '--format', 'calendar', '--out', all);
      const list = readFileSync(path.join(all, 'demo-clinic', 'people.txt'), 'utf8');
      expect(list.trim().split('\n')).toHaveLength(stories.length);
      // Nothing has been signed for her yet.
      const none = await asked('--patient', 'first-visit', '--format', 'calendar', '--out', out('none.ics'));
      expect(none).toMatchObject({ code: 1, problem: expect.stringContaining('Nothing is planned') });
    });

    it('never writes over what is there', async () => {
      const to = out('once.json');
      await of('first-visit', to);
      const before = readFileSync(to);
      expect(await of('first-visit', to)).toMatchObject({
        code: 2,
        problem: expect.stringContaining('is there already'),
      });
      expect(readFileSync(to).equals(before)).toBe(true);
    });

    it('knows nobody by another name, and says how it is called', async () => {
      expect(await of('nobody', out('nobody.json'))).toMatchObject({ code: 2 });
      expect(existsSync(out('nobody.json'))).toBe(false);
      expect(await asked('--help')).toMatchObject({ code: 0, out: expect.stringContaining('Usage') });
    });

    it.each(refused)('refuses where %s', async (_why, args, problem) => {
      expect(await asked(...args)).toMatchObject({ code: 2, problem: expect.stringContaining(problem) });
    });
  });
