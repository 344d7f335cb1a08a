/** Every text beside a patient is decided on: it goes when the person is erased, or it stays and is said to hold no words. */
import { is } from 'drizzle-orm';
import { getTableConfig, SQLiteTable } from 'drizzle-orm/sqlite-core';
import { describe, expect, it } from 'vitest';
import * as schema from '#data/schema/schema.ts';
import { actorNames, goesWithPerson, wordsAboutPeople } from '#data/schema/words-about-people.ts';

/** Text columns beside a patient that stay, by their name, with what they hold. */
const keptTexts: Readonly<Record<string, string>> = {
  engine_version: 'number of a release',
  sheet_version: 'number of a sheet',
  language: 'a word of a list',
  medicine_class: 'a word of a list',
  kind: 'a word of a list',
  joint: 'a word of a list',
  zone: 'a time zone',
  day: 'a day',
  last_day: 'a day',
  from_day: 'a day',
  to_day: 'a day',
  by_day: 'a day',
  on_day: 'a day',
  lifted_on: 'a day',
  expected_back: 'a day',
  until: 'a day',
  signed_day: 'a day',
  recorded_on: 'a day',
  set_on: 'a day',
  due_on: 'a day',
  tightened_from: 'a day',
  time: 'a time of day',
  role: 'of the clinician who signs, printed with the name',
  registration: 'of the clinician who signs, printed with the name',
  amends: 'an id',
  item_key: 'an id',
  assignee: 'an id',
  digest: 'a digest with a key',
};

/** JSON beside a patient that stays: words of lists, ids, figures. */
const keptJson: readonly string[] = [
  'bad_day',
  'cautions',
  'change_for_patient',
  'changes',
  'closed_items',
  'decision_ids',
  'dose',
  'facts',
  'findings',
  'flags',
  'followed_joints',
  'items',
  'how',
  'joints',
  'limb_checks',
  'morning_spread',
  'news',
  'note_ids',
  'owned_equipment',
  'owned_loads_kg',
  'reasons',
  'red_flags',
  'sign_ids',
  'sign_slips',
  'signs_asked',
  'swelling_not_asked',
  'working',
  'worklist',
];

const tables = (Object.values(schema) as readonly unknown[])
  .filter((one): one is SQLiteTable => is(one, SQLiteTable))
  .map((table) => getTableConfig(table))
  .filter(({ columns }) => columns.some(({ name }) => name === 'patient_id'));
const textsOf = ({ columns }: (typeof tables)[number]) =>
  columns.filter((column) => column.getSQLType() === 'text' && !column.enumValues?.length);
const isJson = (column: { columnType: string }) => column.columnType === 'SQLiteCustomColumn';
const isId = (name: string) => /^id$|_id$|_by$/.test(name);
/** Its rows are sealed, and hold ids and names of fields alone. */
const sealed = 'audit';
const decided = tables.filter(({ name }) => name !== sealed && !goesWithPerson.includes(name));

describe('words about people', () => {
  it('stand in columns that are each decided on', () => {
    const undecided = decided.flatMap((table) => {
      const { words = [], json = {} } = wordsAboutPeople[table.name] ?? {};
      return textsOf(table)
        .filter((column) =>
          isJson(column)
            ? !(column.name in json) && !keptJson.includes(column.name)
            : !words.includes(column.name) &&
              !isId(column.name) &&
              !(column.name in actorNames) &&
              !(column.name in keptTexts),
        )
        .map(({ name }) => `${table.name}.${name}`);
    });
    expect(undecided).toEqual([]);
  });

  it('are lists of columns that exist, beside a patient, as what they are listed', () => {
    const wrong = Object.entries(wordsAboutPeople).flatMap(([name, { words = [], json = {} }]) => {
      const table = decided.find((one) => one.name === name);
      const texts = table ? textsOf(table) : [];
      const has = (column: string, asJson: boolean) =>
        texts.some((one) => one.name === column && isJson(one) === asJson);
      return [
        ...words.filter((column) => !has(column, false)).map((column) => `${name}.${column}`),
        ...Object.keys(json)
          .filter((column) => !has(column, true))
          .map((column) => `${name}.${column}`),
      ];
    });
    expect(wrong).toEqual([]);
    const names = new Set(decided.flatMap((table) => textsOf(table).map(({ name }) => name)));
    expect(
      [...Object.keys(keptTexts), ...keptJson, ...Object.keys(actorNames)].filter((one) => !names.has(one)),
    ).toEqual([]);
    expect(goesWithPerson.filter((one) => !tables.some(({ name }) => name === one))).toEqual([]);
  });

  it('stand in no column that is also said to hold none', () => {
    const both = Object.entries(wordsAboutPeople).flatMap(([name, { json = {} }]) =>
      Object.keys(json)
        .filter((column) => keptJson.includes(column))
        .map((column) => `${name}.${column}`),
    );
    expect(both).toEqual([]);
  });
});
