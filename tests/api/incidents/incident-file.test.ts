/** The incidents as a file: every entry in it, as RFC 4180 has it, and nothing in it for a spreadsheet to run. */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { csvOf } from '#api/clinician/incidents/csv.ts';
import type { Store } from '#data/database/store.ts';
import { incidentFileHandler } from '#server/http/incident-file-handler.ts';
import type { Runtime } from '#server/runtime.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { account, browser, testOrigin, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST as signInPost } from '../../../src/app/api/auth/[...all]/route.ts';

/** A reader of RFC 4180 of its own: cells in quotes, a quote doubled, CRLF after each row. */
const read = (text: string): string[][] => {
  const rows: string[][] = [];
  let cells: string[] = [];
  for (let from = 0; from < text.length; ) {
    expect(text[from]).toBe('"');
    let cell = '';
    let place = from + 1;
    while (text[place] !== '"' || text[place + 1] === '"') {
      cell += text[place];
      place += text[place] === '"' ? 2 : 1;
    }
    cells.push(cell);
    const isEnd = text.startsWith('\r\n', place + 1);
    if (isEnd) rows.push(cells);
    if (isEnd) cells = [];
    else expect(text[place + 1]).toBe(',');
    from = place + (isEnd ? 3 : 2);
  }
  return rows;
};

describe('a table as text', () => {
  it('comes back cell by cell, whatever stands in it', () => {
    // Without what parts cells for some spreadsheets: what a formula after it becomes is said below.
    const cell = fc.string({ unit: 'binary' }).map((text) => `a${text.replace(/[;\t\r\n]/g, '')}`);
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 1 }), { minLength: 1 }), (rows) => {
        expect(read(csvOf(rows))).toEqual(rows);
      }),
    );
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '  =1', '\ttext', '＝1', '＋1', '－1', '＠A1'])(
    'begins no cell as a formula: %j is text',
    (text) => {
      expect(read(csvOf([[text]]))).toEqual([[`'${text}`]]);
    },
  );

  it.each([
    ['\t=1', "'\t'=1"],
    ['\r=1', "'\r'=1"],
    ['\n=1', "'\n'=1"],
    ['hi\r\n=1+1;x', "hi\r\n'=1+1;x"],
    ['ok;=1+1|x', "ok;'=1+1|x"],
  ])('begins none where a spreadsheet parts cells at ;, tabs or line ends: %j is %j', (text, expected) => {
    expect(read(csvOf([[text]]))).toEqual([[expected]]);
  });

  it.each(['', 'a\r\nb; c', 'a=1', '1-2', 'mail@test.invalid', "'=1", '5 kg'])(
    'leaves %j as it is',
    (text) => {
      expect(read(csvOf([[text]]))).toEqual([[text]]);
    },
  );
});

describe('the file of a clinic', () => {
  let store: Store;
  let at: Runtime;
  beforeEach(async () => {
    store = freshStore();
    await clinicNamed(store, 'a');
    at = testRuntime(store, { DEMO: '1' });
  });
  afterEach(() => store.close());

  const write = async () => {
    const { incidents } = asClinician(accessOf(store, 'a', 'writer', undefined, '=Writer')).clinician;
    const incident = {
      when: '2026-03-01',
      kind: 'near-miss',
      happened: 'First line, "quoted"\nsecond line',
      doneAtOnce: null,
      wouldPrevent: '=HYPERLINK("http://elsewhere.invalid")',
      told: null,
    };
    const incidentId = await incidents.record({ incident });
    await incidents.correct({ incidentId, seen: 1, incident: { ...incident, kind: 'no-harm' } });
    await incidents.close({ incidentId, reason: 'Learned from.' });
    return incidents.file();
  };

  it('holds a row for each entry, which of them counts, and how it was closed; what was not said is empty', async () => {
    const [heading, ...rows] = read(await write());
    const named = rows.map((row) => Object.fromEntries(row.map((cell, place) => [heading![place], cell])));
    const shared = {
      Day: '2026-03-01',
      Time: '',
      About: 'No patient named',
      'What happened': 'First line, "quoted"\nsecond line',
      'Done at once': '',
      'Would prevent it': '\'=HYPERLINK("http://elsewhere.invalid")',
      'Written by': "'=Writer",
      State: 'Closed',
      'Closed and opened again': 'Closed 2026-03-02T09:00:00.000Z by =Writer: Learned from.',
    };
    expect(named).toMatchObject([
      { ...shared, Version: '1', Kind: 'Near miss', Counts: 'No, corrected by a later version' },
      { ...shared, Version: '2', Kind: 'No harm', Counts: 'Yes' },
    ]);
  });

  const ask = async (email: string | null, headers: Record<string, string> = {}) => {
    const from = browser('203.0.113.77');
    if (email) await from.post(signInPost, '/api/auth/sign-in/email', { email, password: testPassphrase });
    return incidentFileHandler(
      at,
      new Request(`${testOrigin}/incidents/file`, {
        headers: { ...Object.fromEntries(from.headers()), ...headers },
      }),
    );
  };

  it('is saved under its day by a clinician and by an administrator, and kept by nothing in between', async () => {
    await write();
    await account(at, { email: 'c@test.invalid' });
    await account(at, { email: 'm@test.invalid', role: 'administrator' });
    for (const email of ['c@test.invalid', 'm@test.invalid']) {
      const response = await ask(email);
      expect(response.status).toBe(200);
      expect(response.headers.get('Content-Type')).toBe('text/csv; charset=utf-8; header=present');
      expect(response.headers.get('Content-Disposition')).toMatch(
        /^attachment; filename="incidents-\d{4}-\d{2}-\d{2}\.csv"$/,
      );
      expect(response.headers.get('Cache-Control')).toBe('no-store');
      expect(read(await response.text())).toHaveLength(3);
    }
  });

  it('is refused to reception, to whoever is signed out, and to another site', async () => {
    await account(at, { email: 'r@test.invalid', role: 'reception' });
    expect((await ask('r@test.invalid')).status).toBe(403);
    expect((await ask(null)).status).toBe(401);
    expect((await ask(null, { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
  });
});
