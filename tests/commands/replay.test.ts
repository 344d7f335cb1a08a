/** The command that looks back: it accounts for every decision of a file, by whichever version it was made. */
import { writeFileSync } from 'node:fs';
import { eq } from 'drizzle-orm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '#commands/replay.ts';
import type { Store } from '#data/database/store.ts';
import { audit, decision } from '#data/schema/schema.ts';
import { accessOf, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let patientId: string;
let env: Readonly<Record<string, string>>;

/** A file whose decisions were changed behind the product: what no release of it would have stored. */
const rewritten = (id: string, columns: Readonly<Record<string, string>>): void => {
  const { client } = store.writer;
  client.exec('DROP TRIGGER IF EXISTS decision_no_update');
  for (const [column, value] of Object.entries(columns))
    client.prepare(`UPDATE decision SET ${column} = ? WHERE id = ?`).run(value, id);
};

beforeAll(async () => {
  store = freshStore();
  const { clinician, patientId: own } = await twoClinics(store);
  patientId = own;
  const item = await signedExercise(clinician, patientId);
  const at = (hours: number) => accessOf(store, 'a', 'clinician-a', start + hours * 3_600_000);
  for (const [place, pain] of [2, 6, 8, 3].entries())
    await sendSession(at(24 * place), patientId, item, pain);
  const rows = await store.read.select().from(decision).where(eq(decision.patientId, patientId));
  expect(rows.length).toBeGreaterThanOrEqual(4);
  const [first, second, third] = rows;
  rewritten(first!.id, { engine_version: '7' });
  rewritten(second!.id, { contact: 'emergency' });
  rewritten(third!.id, { facts: JSON.stringify({ painDuring: 2 }) });
  const key = (name: string, byte: string) => {
    const path = `${store.file}.${name}.key`;
    writeFileSync(path, byte.repeat(32), { mode: 0o600 });
    return path;
  };
  env = {
    DATABASE_FILE: store.file,
    AUDIT_KEY_FILE: key('audit', '07'),
    ENCRYPTION_KEY_FILE: key('encryption', '08'),
  };
}, 60_000);
afterAll(() => store.close());

const file = (name: string, text: string): string => {
  const path = `${store.file}.${name}`;
  writeFileSync(path, text);
  return path;
};

const jsonLines = (out: string) =>
  out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));

describe('npm run replay', () => {
  it('accounts for every decision: same, different and not replayable are as many as there are rows', async () => {
    const { code, out } = await runHere(run, ['--clinic', 'a', '--json'], env);
    const lines = jsonLines(out);
    const { stored, same, different, notReplayable } = lines.at(-1);
    const rows = await store.read.select({ id: decision.id }).from(decision);
    expect([code, stored, same + different + notReplayable]).toEqual([1, rows.length, rows.length]);
    expect([different, notReplayable]).toEqual([1, 2]);
    expect(
      lines
        .slice(0, -1)
        .map(({ outcome, reason, rules }) => [outcome, reason ?? rules])
        .sort(),
    ).toEqual([
      ['different', []],
      ['not-replayable', expect.stringMatching(/^the stored facts lack painBefore, painAfter, /)],
      ['not-replayable', 'this release does not know version 7 of the rules'],
    ]);
  });

  it('says the same in words, and ends with 0 where nothing differs', async () => {
    const { out } = await runHere(run, ['--patient', patientId], env);
    expect(out).toMatch(/rules that differ: the same rules, with another effect/);
    expect(out).toMatch(/\d+ decisions stored: \d+ the same, 1 different, 2 cannot be decided again/);
    expect((await runHere(run, ['--clinic', 'b'], env)).code).toBe(0);
  });

  it('gathered anew, what was rewritten in the file is not what the record says', async () => {
    const { code, out } = await runHere(run, ['--patient', patientId, '--anew', '--json'], env);
    const lines = jsonLines(out);
    expect(code).toBe(1);
    expect(lines.at(-1)).toMatchObject({ different: 2 });
    expect(lines[0].facts.length + lines[1].facts.length).toBeGreaterThan(10);
    const words = await runHere(run, ['--patient', patientId, '--anew'], env);
    expect(words.out).toMatch(/facts that differ: none/);
    expect(words.out).toMatch(/facts of \d+ decisions gathered anew: \d+ the same, 2 different/);
  });

  it('with settings lists the days that would have been others, and warns that nobody knows what would have followed', async () => {
    const settings = file(
      'knee.json',
      JSON.stringify({ joints: { 'right-knee': { acceptablePainLimit: 7 } } }),
    );
    const env2 = { ...env, CLINIC_NOW: '2026-03-08T12:00:00Z', DEMO: '1' };
    const { code, out } = await runHere(
      run,
      ['--patient', patientId, '--settings', settings, '--json'],
      env2,
    );
    const lines = jsonLines(out);
    expect(code).toBe(0);
    expect(lines.slice(0, -1).map(({ day, way }) => [day, way])).toEqual([['2026-03-03', 'bolder']]);
    expect(lines.at(-1).warning).toMatch(/would have answered differently to another dose/);
  });

  it('writes the same days as CSV, and the counts and the warning beside it', async () => {
    const settings = file(
      'csv.json',
      JSON.stringify({ joints: { 'right-knee': { acceptablePainLimit: 7 } } }),
    );
    const at = { ...env, CLINIC_NOW: '2026-03-08T12:00:00Z', DEMO: '1' };
    const { code, out, problem } = await runHere(
      run,
      ['--patient', patientId, '--settings', settings, '--csv'],
      at,
    );
    expect(code).toBe(0);
    expect(out.split('\r\n')[0]).toBe('patient,day,joint,was,would_have_been,way,rules');
    expect(out.split('\r\n').slice(1, -1)).toEqual([
      expect.stringMatching(new RegExp(`^${patientId},2026-03-03,right-knee,[a-z-]+,[a-z-]+,bolder,P2`)),
    ]);
    expect(problem).toMatch(/bolder: 1/);
    expect(problem).toMatch(/would have answered differently to another dose/);
  });

  it('stands in the audit as an opening and changes nothing else', async () => {
    const count = async () => (await store.read.select().from(decision)).length;
    const before = await count();
    await runHere(run, ['--patient', patientId], env);
    const rows = await store.read.select().from(audit).where(eq(audit.subject, 'replay'));
    expect(rows.at(-1)).toMatchObject({ act: 'read', patientId });
    expect(await count()).toBe(before);
  });

  it.each([
    [['--weeks', '0', '--settings', 'FILE'], /--weeks is a whole number from 1 to 52/],
    [['--weeks', '3'], /--weeks goes with --settings/],
    [['--csv'], /--csv goes with --settings/],
    [['--csv', '--json', '--settings', 'FILE'], /without --json/],
    [['--settings', 'none.json'], /none.json cannot be read as JSON/],
    [['--patient', 'nobody'], /There is no patient nobody/],
    [['--clinic', 'nowhere'], /There is no clinic nowhere/],
    [['--what'], /Usage/],
  ])('%j is refused with 2 and how to put it right', async (args, words) => {
    const known = file('ok.json', '{"severe-pain": 7}');
    const { code, problem } = await runHere(
      run,
      args.map((one) => (one === 'FILE' ? known : one)),
      env,
    );
    expect([code, words.test(problem)]).toEqual([2, true]);
  });

  it.each([
    ['{"severe-pain": 70}', /at most 9/],
    ['{"no-such": 1}', /"no-such" is not a setting of the decision rules/],
    ['{"severe-pain": "8"}', /"Pain that eases the dose back and calls the clinic" is a number/],
    ['{}', /Name a setting/],
    ['{"joints": {"right-toe": {}}}', /"right-toe" is not a joint/],
    [
      '{"joints": {"right-knee": {"acceptablePainLimit": 9}}}',
      /right knee: "Acceptable pain limit" is at most 7/,
    ],
  ])('settings such as %s are refused with the reason', async (text, words) => {
    const settings = file('wrong.json', text);
    const { code, problem } = await runHere(run, ['--patient', patientId, '--settings', settings], env);
    expect([code, words.test(problem)]).toEqual([2, true]);
  });

  it('--help says how it is used and ends with 0', async () => {
    const { code, out } = await runHere(run, ['--help'], env);
    expect([code, /^Usage: /.test(out)]).toEqual([0, true]);
  });
});
