/** The demo clinic as a file, and a paper of it by command: the demo's today, no DEMO=1, the same bytes. */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { run as document } from '#commands/document.ts';
import { run as explain } from '#commands/explain.ts';
import { run as loadDemo } from '#commands/load-demo.ts';
import { run as verify } from '#commands/verify-certificate.ts';
import { openStore } from '#data/open-store.ts';
import { stories } from '#demo/patients.ts';
import { readPdf, tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { runHere } from '#tests/support/command-here.ts';
import { demoForOthers } from './demo/for-others.ts';
import { exportsOfDemo } from './demo-exports.ts';
import { importsOfDemo } from './exchange/demo-imports.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-document-'));
const file = path.join(folder, 'demo.sqlite');
const out = (name: string) => path.join(folder, name);

beforeAll(async () => {
  vi.spyOn(console, 'log').mockImplementation(() => undefined);
  vi.stubEnv('DATABASE_FILE', file);
  await loadDemo(['--to', file]);
});
afterAll(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true, force: true });
});

const options = (over: Readonly<Record<string, string>> = {}): readonly string[] =>
  Object.entries({
    patient: 'steady-progress',
    kind: 'plan',
    paper: 'a4',
    language: 'en',
    out: out('a.pdf'),
    ...over,
  }).flatMap(([name, value]) => [`--${name}`, value]);

describe('a paper by command', () => {
  it('is of the demo’s today, the same bytes when made again', async () => {
    expect(await document(options())).toBe(0);
    expect(await document(options({ out: out('b.pdf') }))).toBe(0);
    const [first, again] = ['a.pdf', 'b.pdf'].map((name) => readFileSync(out(name)));
    expect(first!.equals(again!)).toBe(true);
    const { text, pages } = await readPdf(first!);
    expect(pages).toBe(1);
    expect(text[0]).toContain('Maeve Tarrowby');
    expect(text[0]).toContain('Printed on 20 Apr 2026.');
  });

  it('keeps to two pages in large type and prints as many weeks as are asked for', async () => {
    await document([
      ...options({ language: 'de', paper: 'letter', weeks: '2', out: out('c.pdf') }),
      '--large',
    ]);
    const { pages, size } = await readPdf(readFileSync(out('c.pdf')));
    expect([pages <= 4, size]).toEqual([true, [216, 279]]);
  });

  it('writes a letter as well, its first page read in a minute', async () => {
    await document(options({ kind: 'letter', out: out('d.pdf') }));
    const { text, untagged } = await readPdf(readFileSync(out('d.pdf')));
    expect(text[0]).toContain('What we ask of you');
    expect(text[0]?.split(' ').length).toBeLessThanOrEqual(350);
    expect(untagged).toEqual([]);
    await document(options({ kind: 'letter', language: 'de', out: out('e.pdf') }));
    const [german] = (await readPdf(readFileSync(out('e.pdf')))).text;
    expect(german).toContain('Worum wir Sie bitten');
    expect(german?.split(' ').length).toBeLessThanOrEqual(350);
  });

  it.each(stories.flatMap(({ id, letter }) => (letter ? [{ id, ...letter }] : [])))(
    'writes the letter about $id with all that another doctor has to find, its first page within 350 words',
    async ({ id, firstPage, behind }) => {
      const to = out(`letter-${id}.pdf`);
      await document(options({ kind: 'letter', patient: id, out: to }));
      const [first = '', ...record] = (await readPdf(readFileSync(to))).text;
      expect(firstPage.length + behind.length).toBeGreaterThanOrEqual(20);
      expect(firstPage.filter((fact) => !first.includes(fact))).toEqual([]);
      expect(behind.filter((fact) => !record.join(' ').includes(fact))).toEqual([]);
      expect(first.split(' ').length).toBeLessThanOrEqual(350);
    },
  );

  it.each([
    ['discharge', 'en', 'Summary of care so far'],
    ['discharge', 'de', 'Zwischenbericht'],
    ['self-management', 'en', 'What to do on your own'],
    ['self-management', 'de', 'Was Sie selbst tun können'],
    ['handover', 'en', 'Handover'],
    ['handover', 'de', 'Übergabe'],
    ['flare-note', 'en', 'Note about a flare'],
    ['record', 'en', 'My record'],
    ['record', 'de', 'Meine Akte'],
  ])(
    'makes a %s in %s as well, tagged throughout, with the number to ring',
    async (kind, language, title) => {
      const to = out(`${kind}-${language}.pdf`);
      expect(await document(options({ kind, language, patient: 'rheumatoid-flare', out: to }))).toBe(0);
      const { text, tags, untagged } = await readPdf(readFileSync(to));
      expect(wholeText(tagsOf(tags, /^H1$/)[0]!)).toBe(title);
      for (const number of ['020 913 0140', '112']) expect(text.join(' ')).toContain(number);
      expect(untagged).toEqual([]);
    },
  );

  it.each([
    ['kind', 'recipe'],
    ['paper', 'a3'],
    ['language', 'xx'],
    ['weeks', '0'],
    ['weeks', '13'],
    ['patient', 'nobody'],
  ])('refuses --%s %s, says how to put it right and makes nothing', async (name, value) => {
    const to = out('refused.pdf');
    await expect(document(options({ [name]: value, out: to }))).rejects.toMatchObject({ exitCode: 2 });
    expect(existsSync(to)).toBe(false);
  });

  it('never writes a demo over a file that is there', async () => {
    await expect(loadDemo(['--to', file])).rejects.toMatchObject({ exitCode: 2 });
    await expect(loadDemo([])).rejects.toMatchObject({ exitCode: 2 });
  });
});

describe('a decision explained by command', () => {
  const inFile = <T>(sql: string): T[] => {
    const store = openStore(file);
    try {
      return store.reader.client.prepare(sql).all() as T[];
    } finally {
      store.close();
    }
  };
  const asked = (...args: string[]) => runHere(explain, args, { DATABASE_FILE: file });

  it('tells its facts, each rule with threshold and source, its choices, and that it comes out the same today', async () => {
    const [stored] = inFile<{ id: string; facts: string }>(
      "SELECT id, facts FROM decision WHERE patient_id = 'flare-then-hold' AND decision = 'ease-back' LIMIT 1",
    );
    const { code, out: said } = await asked('--decision', stored!.id);
    expect(code).toBe(0);
    expect(said).toMatch(/^clinic demo-clinic, patient flare-then-hold$/m);
    expect(said).toMatch(/^answers: decision ease-back, today /m);
    expect(said).toMatch(
      /^ {2}[A-Z]\d\w* .* Found: .*Threshold: .*Support: .*Effect: decision no more than ease-back/m,
    );
    const facts = Object.keys(JSON.parse(stored!.facts));
    expect(
      said.split('facts:\n')[1]!.split('choices of')[0]!.trim().split('\n').length,
    ).toBeGreaterThanOrEqual(facts.length);
    expect(said).toMatch(/^ {2}\d+ more stand at their defaults$/m);
    expect(said).toContain('Taken again from these facts it comes out the same.');
  });

  it('was asked for, says the audit, as an opening of that record', async () => {
    const [last] = inFile<object>(
      'SELECT act, subject, patient_id AS patientId FROM audit ORDER BY rowid DESC LIMIT 1',
    );
    expect(last).toEqual({ act: 'read', subject: 'explain.decision', patientId: 'flare-then-hold' });
  });

  it('that is not there, or not named, ends with the reason', async () => {
    expect(await asked('--decision', 'no-such')).toMatchObject({
      code: 1,
      problem: expect.stringContaining('no decision no-such'),
    });
    expect(await asked()).toMatchObject({ code: 2, problem: expect.stringContaining('Usage') });
  });
});

describe('the certificate of a decision by command', () => {
  const idOf = (word: string): string => {
    const store = openStore(file);
    const [row] = store.reader.client
      .prepare("SELECT id FROM decision WHERE patient_id = 'flare-then-hold' AND decision = ? LIMIT 1")
      .all(word) as { id: string }[];
    store.close();
    return row!.id;
  };
  const env = { DATABASE_FILE: '' };
  const certificateOf = async (word: string): Promise<string> => {
    const asked = ['--decision', idOf(word), '--certificate'];
    const { code, out: said } = await runHere(explain, asked, { ...env, DATABASE_FILE: file });
    expect(code).toBe(0);
    return said;
  };
  const verified = (text: string, ...more: string[]) => {
    const to = out('certificate.json');
    writeFileSync(to, text);
    return runHere(verify, ['--file', to, ...more], { DATABASE_FILE: file });
  };

  it('verifies by the independent table, by the engine and by the chain of the file', async () => {
    const { code, out: said } = await verified(await certificateOf('ease-back'));
    expect(code).toBe(0);
    expect(said).toMatch(/^table: the independent table, version 2, says the same from these facts$/m);
    expect(said).toMatch(/^engine: .* comes out the same$/m);
    expect(said).toMatch(/^seal: the row is as the audit says it was written$/m);
    expect(said).toMatch(/^chain: row \d+ of this file is the same$/m);
  });

  it('without the key says that the seal was not looked at, and ends otherwise', async () => {
    const { code, out: said } = await verified(await certificateOf('hold'), '--without-key');
    expect(code).toBe(3);
    expect(said).toMatch(/^seal: not looked at/m);
  });

  it('names what was changed, and what is no certificate', async () => {
    const text = await certificateOf('ease-back');
    const changed = await verified(text.replace('"decision": "ease-back"', '"decision": "hold"'));
    expect(changed).toMatchObject({
      code: 1,
      out: expect.stringMatching(/^wrong: by the independent table/m),
    });
    expect(changed.out).toMatch(/^wrong: the decision or its facts are not as they were written/m);
    expect(await verified('{}')).toMatchObject({
      code: 1,
      problem: expect.stringMatching(/is no certificate/),
    });
    expect(await verified('not one')).toMatchObject({ code: 1, problem: expect.stringMatching(/not JSON/) });
    expect(await runHere(verify, [], env)).toMatchObject({ code: 2 });
  });
});

describe('the plans of all, for hours without the server', () => {
  const args = (to: string) => ['--everybody', '--paper', 'a4', '--language', 'en', '--out', to];

  it('are one each for whoever has one, found by a list, for the owner alone', async () => {
    const to = out('everybody');
    expect(await runHere(document, args(to), { DATABASE_FILE: file })).toMatchObject({ code: 0 });
    const list = readFileSync(path.join(to, 'people.txt'), 'utf8').trim().split('\n');
    expect(readdirSync(to)).toHaveLength(list.length + 1);
    expect(list.length).toBeGreaterThan(5);
    const [, name = ''] =
      /^Tarrowby, Maeve, born \d{4}-\d\d-\d\d: (\d{4}\.pdf)$/m.exec(list.join('\n')) ?? [];
    const { text } = await readPdf(readFileSync(path.join(to, name)));
    expect(text[0]).toContain('Maeve Tarrowby');
    // Her first visit has been recorded and nothing is signed yet.
    expect(list.join('\n')).not.toContain(stories.find(({ id }) => id === 'first-visit')!.person.familyName);
    expect(statSync(to).mode & 0o077).toBe(0);
  });

  it('are never put beside older ones, and are asked for without a person', async () => {
    const to = out('there');
    mkdirSync(to);
    expect(await runHere(document, args(to), { DATABASE_FILE: file })).toMatchObject({
      code: 2,
      problem: expect.stringContaining('is there already'),
    });
    const both = await runHere(document, [...args(out('x')), '--patient', 'steady-progress'], {
      DATABASE_FILE: file,
    });
    expect(both).toMatchObject({ code: 2, problem: expect.stringContaining('Usage') });
  });
});

exportsOfDemo({ file, out });
importsOfDemo({ file, out });
demoForOthers({ file, out });
