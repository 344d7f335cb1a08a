/** What a de-identified export tells, of whom, and what every column of the record becomes in it. */
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { recordColumns } from '#data/patients/record-tables.ts';
import { tables } from '#exchange/csv/tables.ts';
import { ageBands, painBand, phaseBand, shareBand, stiffnessBand } from '#exchange/research/bands.ts';
import { researchColumns } from '#exchange/research/columns.ts';
import { factsOf, type Left, type PersonFacts } from '#exchange/research/facts.ts';
import { researchFiles } from '#exchange/research/research-files.ts';
import { treatmentsOf } from '#exchange/research/treatments.ts';
import { madeClinic, recordWith } from './made-people.ts';

const clinic = madeClinic(200, 20260301);
const facts = clinic.map(factsOf);
const isTold = (one: PersonFacts | Left): one is PersonFacts => typeof one !== 'string';
const people = facts.filter(isTold);
const filesOf = (all: readonly PersonFacts[], fill = 1, left: readonly Left[] = []) =>
  new Map(
    researchFiles({ people: all, left, key: Buffer.alloc(32, fill), day: '2026-03-02', hasMark: false }).map(
      ({ name, text }) => [name, text],
    ),
  );
const rowsOf = (files: ReadonlyMap<string, string>, name: string): Record<string, string>[] =>
  parse(files.get(name)!, { columns: true });
const files = filesOf(people);

describe('each column of the record', () => {
  const inWords = (of: (table: string) => Iterable<string>) =>
    Object.keys(tables).flatMap((table) => [...of(table)].map((name) => `${table}.${name}`).sort());

  it('has a treatment, so that a new one is told in no form before somebody has decided on it', () => {
    expect(inWords((table) => treatmentsOf(table).keys())).toEqual(
      inWords((table) => recordColumns[table]!.map(({ name }) => name)),
    );
    expect(treatmentsOf('table_of_tomorrow').size).toBe(0);
  });

  it('that is told is what a column of a file is made from, and the other way round', () => {
    const told = inWords((table) =>
      [...treatmentsOf(table)]
        .filter(([, how]) => ['kept', 'banded', 'shifted'].includes(how))
        .map(([name]) => name),
    );
    expect([...new Set(researchColumns.flatMap(({ from }) => from))].sort()).toEqual(told.sort());
  });

  it('is named beside the files with what became of it', () => {
    const rows = rowsOf(files, 'treatments.csv');
    expect(rows).toHaveLength(
      Object.keys(tables).reduce((sum, table) => sum + recordColumns[table]!.length, 0),
    );
    expect(rows.find(({ column }) => column === 'familyName')).toMatchObject({
      'in these files': expect.stringMatching(/^left out: names/),
    });
  });
});

describe('an export for research', () => {
  it('has nobody in a class of fewer than five, and every file has the columns its dictionary names', () => {
    const classes = new Map<string, number>();
    for (const { sex, ageBand, joint, diagnosis } of rowsOf(files, 'people.csv')) {
      const name = [sex, ageBand, joint, diagnosis].join('|');
      classes.set(name, (classes.get(name) ?? 0) + 1);
    }
    expect(Math.min(...classes.values())).toBeGreaterThanOrEqual(5);
    for (const name of new Set(researchColumns.map(({ file }) => file)))
      expect(Object.keys(rowsOf(files, `${name}.csv`)[0]!)).toEqual(
        researchColumns.filter(({ file }) => file === name).map(({ column }) => column),
      );
  });

  it('tells five who are alike and leaves out four, and says how many', () => {
    const alike = (count: number) =>
      Array.from({ length: count }, (_, at) => ({ ...people[0]!, id: `alike-${at}` }));
    expect(rowsOf(filesOf(alike(5)), 'people.csv')).toHaveLength(5);
    const four = filesOf(alike(4));
    expect(rowsOf(four, 'people.csv')).toEqual([]);
    expect(four.get('read-me.txt')).toContain('alone even in the widest class: 4');
  });

  it('widens the age before the diagnosis, that before the joint, and withholds the sex before the age', () => {
    const [one] = people;
    const with5 = (other: Partial<PersonFacts>) =>
      rowsOf(
        filesOf([
          ...Array.from({ length: 4 }, (_, at) => ({
            ...one!,
            ageYears: 62,
            joint: 'left-knee' as const,
            id: `a${at}`,
          })),
          { ...one!, ageYears: 62, joint: 'left-knee' as const, id: 'other', ...other },
        ]),
        'people.csv',
      )[0]!;
    expect(with5({ ageYears: 64 }).ageBand).toBe('60 to 69');
    expect(with5({ ageYears: 75 }).ageBand).toBe('60 to 79');
    expect(with5({ ageYears: 85 }).ageBand).toBe('60 or over');
    expect(with5({ isInflammatory: false, diagnosis: 'x' })).toMatchObject({
      diagnosis: 'not inflammatory',
      joint: 'knee',
    });
    expect(with5({ joint: 'left-hip' })).toMatchObject({ joint: 'leg', sex: one!.sex });
    expect(with5({ sex: 'other' })).toMatchObject({ sex: 'withheld', ageBand: '60 or over' });
    expect(with5({ ageYears: 40 })).toMatchObject({ sex: 'withheld', ageBand: 'withheld', joint: 'leg' });
  });

  it('holds no name, no id, no word and no day of the record', () => {
    const all = [...files.values()].join('\n');
    for (const { patient } of clinic) {
      expect(all).not.toContain(patient.id);
      expect(all).not.toContain(patient.familyName);
    }
    expect(all).not.toMatch(/Words on|\d{4}-\d{2}-\d{2}T/);
    for (const name of ['sessions.csv', 'mornings.csv', 'decisions.csv', 'measurements.csv'])
      expect(files.get(name)).not.toMatch(/\d{4}-\d{2}-\d{2}|made-|[0-9a-f]{16}/);
  });

  it('gives other ids and other weeks under another key, and the same rows of answers', () => {
    const other = filesOf(people, 2);
    const ids = new Set(rowsOf(files, 'people.csv').map(({ person }) => person));
    expect(rowsOf(other, 'people.csv').filter(({ person }) => ids.has(person))).toEqual([]);
    expect(other.get('mornings.csv')).toBe(files.get('mornings.csv'));
  });

  it('names Mondays of ten years as first weeks, spread over all of them', () => {
    const weeks = rowsOf(files, 'people.csv').map(({ firstWeek }) => new Date(`${firstWeek}T00:00:00Z`));
    expect(weeks.every((day) => day.getUTCDay() === 1)).toBe(true);
    expect(Math.min(...weeks.map((day) => day.getUTCFullYear()))).toBeLessThanOrEqual(2017);
    expect(Math.max(...weeks.map(Number))).toBeLessThanOrEqual(Date.parse('2026-03-02'));
  });

  it('tells at home no row that fewer than five people of its class share', () => {
    const rare = people.map((one, at) =>
      at === 0
        ? { ...one, rows: { ...one.rows, mornings: [['7 to 10', 'none', 'yes', 'rare phase']] } }
        : one,
    );
    expect(filesOf(rare).get('mornings.csv')).not.toContain('rare phase');
  });
});

describe('who is left out', () => {
  const with1 = (extra: Readonly<Record<string, readonly object[]>>) => {
    const [{ patient, rows }] = clinic as [(typeof clinic)[number]];
    const names = ['care_profile', 'training_session', 'session_joint', 'morning', 'morning_joint'] as const;
    return factsOf(
      recordWith(patient, { ...Object.fromEntries(names.map((name) => [name, rows[name]])), ...extra }),
    );
  };
  const said = (act: string, at: number, kind = 'export') => ({ kind, act, recordedAt: at, byName: 'x' });

  it('is whoever refused or withdrew consent last, and nobody who gave it since or was not asked', () => {
    expect(with1({ consent: [said('given', 1), said('withdrawn', 2)] })).toBe('refused');
    expect(with1({ consent: [said('refused', 1, 'sharing')] })).toBe('refused');
    expect(isTold(with1({ consent: [said('given', 2), said('refused', 1)] }))).toBe(true);
    expect(isTold(with1({}))).toBe(true);
  });

  it('is a record merged into another, unless that was undone', () => {
    const act = (version: number, name: string) => ({ version, act: name });
    expect(with1({ patient_merge: [act(1, 'merged')] })).toBe('merged');
    expect(isTold(with1({ patient_merge: [act(1, 'merged'), act(2, 'undone')] }))).toBe(true);
  });

  it('is an entry marked as entered in error, and one that a later entry replaced', () => {
    const all = (with1({}) as PersonFacts).sessions;
    const [first, second] = clinic[0]!.rows.training_session;
    expect((with1({ correction: [{ subjectId: first!.id }] }) as PersonFacts).sessions).toBe(all - 1);
    const sentAgain = [first!, { ...second!, amends: first!.entryId }];
    expect((with1({ training_session: sentAgain }) as PersonFacts).sessions).toBe(1);
  });
});

it('an entry whose correction waits to be looked at stands until that was seen', () => {
  const [{ patient, rows }] = clinic as [(typeof clinic)[number]];
  const told = (plan_seen: readonly object[]) => {
    const correction = [{ id: 'c', subjectId: rows.training_session[0]!.id, waits: true }];
    return (factsOf(recordWith(patient, { ...rows, correction, plan_seen })) as PersonFacts).sessions;
  };
  expect(told([{ correctionId: 'other' }]) - told([{ correctionId: 'c' }])).toBe(1);
});

describe('bands', () => {
  it.each([
    [19, 'under 20', 'under 40', 'under 60'],
    [20, '20 to 29', 'under 40', 'under 60'],
    [59, '50 to 59', '40 to 59', 'under 60'],
    [60, '60 to 69', '60 to 79', '60 or over'],
    [89, '80 to 89', '80 or over', '60 or over'],
    [90, '90 or over', '80 or over', '60 or over'],
    [104, '90 or over', '80 or over', '60 or over'],
  ])('of age %i are %s, %s and %s', (age, ten, twenty, two) => {
    expect([ageBands.ten(age), ageBands.twenty(age), ageBands.two(age)]).toEqual([ten, twenty, two]);
  });

  it('keep a zero apart from what was not answered', () => {
    expect([null, 0, 1, 3, 4, 6, 7, 10].map(painBand)).toEqual([
      '',
      '0',
      '1 to 3',
      '1 to 3',
      '4 to 6',
      '4 to 6',
      '7 to 10',
      '7 to 10',
    ]);
    expect([null, 0, 29, 30].map(stiffnessBand)).toEqual(['', 'none', 'under 30 min', '30 min or more']);
  });

  it('tell a day by the part of the course and a figure by the first', () => {
    expect([-1, 0, 27, 28, 83, 84].map(phaseBand)).toEqual([
      'before the first session',
      ...['first 4 weeks', 'first 4 weeks', 'weeks 5 to 12', 'weeks 5 to 12', 'week 13 or later'],
    ]);
    expect([null, 0.94, 0.95, 1.05, 1.06, 1.5, 1.51].map(shareBand)).toEqual([
      ...['', 'under the first', 'as the first', 'as the first'],
      ...['up to half more', 'up to half more', 'more than half more'],
    ]);
  });
});
