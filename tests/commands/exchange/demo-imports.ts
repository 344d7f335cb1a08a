/** Imports by command: every story of the demo exported, taken into an empty clinic and exported from there; and a table. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { run as createClinic } from '#commands/create-clinic.ts';
import { run as exportRecords } from '#commands/exchange/export.ts';
import { run as importFile } from '#commands/exchange/import.ts';
import { demoNow } from '#demo/clinic.ts';
import { stories } from '#demo/patients.ts';
import { inScope } from '#tests/exchange/import/in-scope.ts';
import { type Ended, runHere } from '#tests/support/command-here.ts';

interface Files {
  readonly file: string;
  readonly out: (name: string) => string;
}

const clinic: readonly string[] = [
  ...['--name', 'Empty Clinic', '--zone', 'Europe/Dublin', '--phone', '01 913 0100', '--emergency', '112'],
  ...['--monitoring-hours', 'Mon-Fri 08:30-18:30', '--administrator', 'First Person'],
  ...['--email', 'first@test.invalid'],
];

const refused: readonly (readonly [string, readonly string[], string])[] = [
  ['nobody is named', ['--format', 'csv', '--from', '/dev/null'], 'Missing: --patient'],
  ['the format is unknown', ['--patient', 'a', '--from', 'x', '--format', 'xml'], 'There is no file'],
  ['an option is unknown', ['--patient', 'a', '--fromat', 'csv'], 'Usage'],
  ['an import is taken back without a reason', ['--patient', 'a', '--undo', 'b'], 'Missing: --reason'],
];

export const importsOfDemo = ({ file, out }: Files): unknown =>
  describe('imports by command', () => {
    const empty = out('empty-clinic.sqlite');
    const there = { DATABASE_FILE: empty };
    const imported = (...args: readonly string[]): Promise<Ended> => runHere(importFile, args, there);
    beforeAll(async () => {
      // The demo's today, so that its days have passed whenever this runs.
      vi.useFakeTimers({ toFake: ['Date'], now: Date.parse(demoNow) });
      await runHere(createClinic, clinic, there);
    });
    afterAll(() => void vi.useRealTimers());
    const exported = async (id: string, from: Readonly<Record<string, string>>, name: string) => {
      const to = out(name);
      // What the exports of the demo have written already need not be written again.
      if (!existsSync(to))
        await runHere(exportRecords, ['--patient', id, '--format', 'fhir', '--out', to], from);
      return { to, bundle: JSON.parse(readFileSync(to, 'utf8')) };
    };

    it.each(stories.map(({ id }) => id))(
      '%s comes through an empty clinic with name, birth, telephone, conditions and every figure taken the same',
      async (id) => {
        const first = await exported(id, { DATABASE_FILE: file }, `${id}.fhir.json`);
        const ended = await imported(
          ...[
            '--patient',
            'new',
            '--format',
            'fhir',
            '--from',
            first.to,
            '--confirm',
            'same-day-twice,unlikely',
          ],
        );
        expect(ended).toMatchObject({ code: 0, out: expect.stringContaining('taken as import') });
        const [, added = ''] = /added as (\S+)/.exec(ended.out) ?? [];
        const second = await exported(added, there, `${id}.again.json`);
        expect(inScope(second.bundle, 'Europe/Dublin')).toEqual(inScope(first.bundle, 'Europe/Dublin'));
        expect(inScope(first.bundle, 'Europe/Dublin').conditions.length).toBeGreaterThan(0);
      },
    );

    it('somebody is not added twice, and a table is read through, told row by row, taken once it is right, and taken back as one', async () => {
      const first = await exported('steady-progress', { DATABASE_FILE: file }, 'steady-progress.fhir.json');
      const asNew = ['--patient', 'new', '--format', 'fhir', '--from', first.to];
      const again = await imported(...asNew, '--confirm', 'same-day-twice,unlikely');
      expect(again).toMatchObject({
        code: 1,
        problem: expect.stringContaining('add the person on the desk'),
      });
      const [, person = ''] = /already: (\S+)\./.exec(again.problem) ?? [];
      const table = out('table.csv');
      writeFileSync(table, 'Datum;Gelenk;Schmerz\n1.2.2026;right-knee;3\n2.2.2026;right-knee;12\n');
      const asked = ['--patient', person, '--format', 'csv', '--kind', 'mornings', '--from', table];
      const marks = ['--separator', 'semicolon', '--days', 'DD.MM.YYYY'];
      const dry = await imported(...asked, ...marks, '--dry-run');
      expect(dry.code).toBe(1);
      for (const words of [
        'row 3 · Schmerz · "12" · A whole number from 0 to 10.',
        'day ← "Datum" (found by its heading)',
      ])
        expect(dry.out).toContain(words);
      const said = ['--map', 'day=Datum, joint=Gelenk, pain=Schmerz', '--leave-out-faulty'];
      const taken = await imported(...asked, ...marks, ...said);
      expect(taken).toMatchObject({ code: 0, out: expect.stringContaining('morning 1, left out 1') });
      const [, id = ''] = /taken as import (\S+)/.exec(taken.out) ?? [];
      const back = ['--patient', person, '--undo', id, '--reason', 'Other person'];
      expect(await imported(...back)).toMatchObject({ code: 0, out: 'Taken back.\n' });
      expect(await imported(...back)).toMatchObject({ out: 'It had been taken back before.\n' });
    });

    it.each(refused)('refuses where %s', async (_why, args, problem) => {
      expect(await imported(...args)).toMatchObject({ code: 2, problem: expect.stringContaining(problem) });
    });

    it('says how it is called', async () => {
      expect(await imported('--help')).toMatchObject({ code: 0, out: expect.stringContaining('--dry-run') });
    });
  });
