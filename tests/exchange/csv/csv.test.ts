/** The record as CSV: read back as it was written, with nothing a spreadsheet would work out. */
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { recordColumns } from '#data/patients/record-tables.ts';
import { csvLines, guarded, unguarded } from '#exchange/csv/cells.ts';
import { dictionary, headOf, personTables } from '#exchange/csv/person-csv.ts';
import { notOfTheRecord, tables } from '#exchange/csv/tables.ts';
import { wholeRecord } from '../whole-record.ts';

const read = (text: string): Record<string, string>[] => parse(text, { columns: true });

describe('a cell', () => {
  it.each([
    ['[exchange 108]', '=1+1', "'=1+1"],
    ['[exchange 109]', '+1', "'+1"],
    ['[exchange 110]', '-3', "'-3"],
    ['[exchange 111]', '@x', "'@x"],
    ['[exchange 112]', '\tx', "'\tx"],
    ['[exchange 114]', 'ok', 'ok'],
    ['after blanks', '  =1', "'  =1"],
    ['after a new line', '\n=2', "'\n'=2"],
    ['after a line of text, where cells end at ;', 'hi\n=1+1;x', "hi\n'=1+1;x"],
    ['after a semicolon', 'ok;=1+1|x', "ok;'=1+1|x"],
    ['after a semicolon and blanks', 'ok; =1;\u00a0@x', "ok;' =1;'\u00a0@x"],
    ['after a semicolon and a quote', 'ok;"=1"', `ok;'"=1"`],
    ['after a tab in a text', 'ok\t-1', "ok\t'-1"],
    ['in wide letters after a semicolon', 'ok;＝1', "ok;'＝1"],
    ['after empty lines', 'ok\n\n+1', "ok\n\n'+1"],
    ['with a semicolon before words', 'ok; then 1-2', 'ok; then 1-2'],
    ['after blanks no book shows', '\u00a0=2', "'\u00a0=2"],
    ['in wide letters', '＝1', "'＝1"],
    ['inside a text', 'a=1', 'a=1'],
    ['empty', '', ''],
  ])('%s: %j is written as %j', (_row, text, expected) => {
    expect(guarded(text)).toBe(expected);
    expect(unguarded(expected)).toBe(text);
  });

  it('that is a number stays one [exchange 113]', () => {
    expect(csvLines([[-3, 0, null]])).toBe('-3,0,\r\n');
  });

  it('is quoted where it has to be [exchange 115]', () => {
    expect(csvLines([['a"b,c']])).toBe('"a""b,c"\r\n');
    expect(csvLines([['a\rb']])).toBe('"a\nb"\r\n');
  });
});

describe('a record as CSV', () => {
  const record = wholeRecord();
  const written = new Map(
    personTables('person-1', record.rows).map(({ table, lines }) => [table, read(headOf(table) + lines)]),
  );

  it('has a file for each kind of row, each row with its person, and every column', () => {
    const tests = written.get('measurement')!;
    expect(tests).toHaveLength(record.rows.measurement.length);
    expect(tests[0]).toMatchObject({
      patientId: 'person-1',
      id: 'm-weight',
      recordedAt: '2026-03-02T09:00:00.000Z',
      confirmed: 'no',
      homeAnswersId: '',
    });
    expect(JSON.parse(tests[0]!.value!)).toEqual(record.rows.measurement[0]!.value);
  });

  it('leaves empty what was not answered and writes a zero that was said', () => {
    expect(written.get('session_joint')![0]).toMatchObject({ painDuring: '0', painAfter: '' });
  });

  it('is no answer where the record keeps the more cautious one for want of an answer', () => {
    const [session] = record.rows.training_session;
    const of = (over: object) => {
      const rows = { ...record.rows, training_session: [{ ...session!, ...over }] };
      const [one] = personTables('p', rows).filter(({ table }) => table === 'training_session');
      return read(headOf('training_session') + one!.lines)[0]!;
    };
    const open = { didExtra: true, didExtraUnanswered: true };
    const unasked = { reportedNew: false, news: null, otherJointWorse: null };
    expect(of({ ...open, ...unasked })).toMatchObject({ didExtra: '', reportedNew: '' });
    expect(of({ didExtra: true, didExtraUnanswered: false })).toMatchObject({ didExtra: 'yes' });
    expect(of({ ...unasked, news: [] })).toMatchObject({ reportedNew: 'no' });
  });

  it('is no answer of a joint that gave way either, and the dictionary says that it may be empty', () => {
    const [joint] = record.rows.session_joint;
    const given = (gaveWayUnanswered: boolean) => {
      const rows = { ...record.rows, session_joint: [{ ...joint!, gaveWay: true, gaveWayUnanswered }] };
      const [one] = personTables('p', rows).filter(({ table }) => table === 'session_joint');
      return read(headOf('session_joint') + one!.lines)[0]!.gaveWay;
    };
    expect([given(true), given(false)]).toEqual(['', 'yes']);
    const told = read(dictionary()).filter(({ column }) => column === 'gaveWay' || column === 'didExtra');
    expect(told.map((row) => row['may be empty'])).toEqual(told.map(() => 'yes'));
  });

  it('explains every column of every table, with its unit and the words it keeps to', () => {
    const rows = read(dictionary());
    const named = new Set(rows.map(({ table, column }) => `${table}.${column}`));
    const wanted = Object.keys(tables).flatMap((table) =>
      recordColumns[table]!.map(({ name }) => `${table}.${name}`),
    );
    expect(wanted.filter((name) => !named.has(name))).toEqual([]);
    const row = (name: string) => rows.find(({ table, column }) => `${table}.${column}` === name);
    expect(row('session_joint.painBefore')).toMatchObject({
      'unit or scale': '0 to 10',
      'may be empty': 'yes',
    });
    expect(row('set_log.loadKg')).toMatchObject({ 'unit or scale': 'kg', kind: 'number' });
    expect(row('consent.act')).toMatchObject({ 'one of': 'given | refused | withdrawn' });
  });

  it('says of the copies handed on that exports are not among them, and where those stand', () => {
    const about = read(dictionary()).find(({ table }) => table === 'record_file')!['a row is'];
    expect(about).toMatch(/desk, the patient or a command exported stands in the audit alone/);
  });

  it('has every table that holds rows of a person, or says why not', () => {
    expect([...Object.keys(tables), ...Object.keys(notOfTheRecord)].sort()).toEqual(
      Object.keys(recordColumns).sort(),
    );
  });
});
