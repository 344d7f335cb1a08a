/**
 * Attempts to find again, in a de-identified export, the people of the full record. The attacker holds every row of
 * the record and the rule by which the export is made, and lacks its key alone. What is counted is the mean number of
 * right guesses; guessing knows the published class and nothing else.
 */
import { createHmac } from 'node:crypto';
import { parse } from 'csv-parse/sync';
import { dayNumber } from '#core/time/day.ts';
import { classColumns, classesOf, type PeopleClass, rowClassesOf } from '#exchange/research/classes.ts';
import { type PersonFacts, type RowFile, rowFiles } from '#exchange/research/facts.ts';
import { personColumns, personRowsOf } from '#exchange/research/people.ts';
import { researchFiles } from '#exchange/research/research-files.ts';

export interface Outcome {
  readonly attack: string;
  readonly of: number;
  readonly found: number;
  readonly guessed: number;
}

type Line = Readonly<Record<string, string>>;

const keys = Array.from({ length: 40 }, (_, at) => Buffer.alloc(32, at + 1));
const day = '2026-03-02';

const exportOf = (people: readonly PersonFacts[]): ReadonlyMap<string, readonly Line[]> =>
  new Map(
    researchFiles({ people, left: [], key: keys[0]!, day, hasMark: false })
      .filter(({ name }) => name.endsWith('.csv'))
      .map(({ name, text }) => [name.slice(0, -4), parse(text, { columns: true })]),
  );

/** The one file that hangs on the key. */
const peopleUnder = (classes: readonly PeopleClass[], key: Buffer): readonly Line[] => {
  const head = [...personColumns, ...classColumns];
  return personRowsOf(classes, { key, day }).map((row) =>
    Object.fromEntries(row.map((cell, at) => [head[at]!, cell])),
  );
};

/** Whose row is whose, which only whoever holds the key can tell. */
const truthOf = (people: readonly PersonFacts[], key: Buffer): ReadonlyMap<string, PersonFacts> =>
  new Map(
    people.map((one) => [
      createHmac('sha256', key).update(`person ${one.id}`).digest('hex').slice(0, 16),
      one,
    ]),
  );

const classOf = (line: Line): string => [line.sex, line.ageBand, line.joint, line.diagnosis].join('|');
const rowClassOf = (line: Line): string => [line.joint, line.diagnosis].join('|');
const courseOf = (line: Line): string => [line.painChange, line.weeksFollowed, line.sessionsSent].join('|');

const counted = <T>(list: readonly T[], keyOf: (one: T) => string): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const one of list) counts.set(keyOf(one), (counts.get(keyOf(one)) ?? 0) + 1);
  return counts;
};

/** Of each group of alike rows one is found, whoever is named for all of them. */
const groupsOf = (lines: readonly Line[], keyOf: (line: Line) => string): number =>
  counted(lines, keyOf).size;

/** Names for each row of a group the person who began as early among them as the row says, and counts the hits. */
const foundByDates = (people: readonly PersonFacts[], alike: (line: Line) => string): number => {
  const { settled } = classesOf(people);
  let hits = 0;
  for (const key of keys) {
    const truth = truthOf(people, key);
    const groups = new Map<string, Line[]>();
    for (const line of peopleUnder(settled, key))
      groups.set(alike(line), [...(groups.get(alike(line)) ?? []), line]);
    for (const lines of groups.values()) {
      const asTold = [...lines].sort((one, other) => (one.firstWeek! < other.firstWeek! ? -1 : 1));
      const asTrue = lines
        .map((line) => truth.get(line.person!)!)
        .sort((one, other) => dayNumber(one.firstDay) - dayNumber(other.firstDay));
      hits += asTold.filter((line, at) => truth.get(line.person!) === asTrue[at]).length;
    }
  }
  return hits / keys.length;
};

const attacksOnPeople = (people: readonly PersonFacts[]): readonly Outcome[] => {
  const lines = exportOf(people).get('people')!;
  const guessed = groupsOf(lines, classOf);
  const together = (line: Line) => `${classOf(line)}|${courseOf(line)}`;
  const of = lines.length;
  return [
    { attack: 'dates of first sessions', of, found: foundByDates(people, classOf), guessed },
    { attack: 'number of sessions, weeks and pain', of, found: groupsOf(lines, together), guessed },
    { attack: 'all of a person’s row', of, found: foundByDates(people, together), guessed },
  ];
};

const largestOf = (owners: readonly string[]): number =>
  Math.max(0, ...counted(owners, (one) => one).values());

/** Where a row of the record went: the narrowest of the published texts that it reads like; null = left out. */
const publishedAs = (cells: readonly string[], texts: ReadonlySet<string>): string | null => {
  for (let hidden = 0; hidden < cells.length; hidden += 1) {
    const text = cells.map((cell, at) => (at < cells.length - hidden ? cell : 'withheld')).join('|');
    if (texts.has(text)) return text;
  }
  return null;
};

/** Names for each row whoever of its class has most rows among those that read so. */
const attackOnRows = (people: readonly PersonFacts[], file: RowFile): Outcome => {
  const lines = exportOf(people).get(file)!;
  const textOf = (line: Line) => rowFiles[file].map((column) => line[column]).join('|');
  const outcome = { found: 0, guessed: 0, owned: 0 };
  for (const { label, members } of rowClassesOf(classesOf(people).settled)) {
    const texts = new Set(lines.filter((line) => rowClassOf(line) === label.join('|')).map(textOf));
    const rows = members.flatMap(({ id, rows: all }) =>
      all[file].map((cells) => ({ id, text: publishedAs(cells, texts) })),
    );
    const told = rows.filter(({ text }) => text !== null);
    outcome.owned += told.length;
    outcome.guessed += largestOf(told.map(({ id }) => id));
    for (const text of texts)
      outcome.found += largestOf(told.filter((row) => row.text === text).map(({ id }) => id));
  }
  // Every published row is accounted for, so that the attack is as strong as it can be.
  if (outcome.owned !== lines.length) throw new Error(`${outcome.owned} rows explain ${lines.length}`);
  return { attack: `rows of ${file}.csv`, of: lines.length, ...outcome };
};

export const attacksOn = (people: readonly PersonFacts[]): readonly Outcome[] => [
  ...attacksOnPeople(people),
  ...(Object.keys(rowFiles) as RowFile[]).map((file) => attackOnRows(people, file)),
];

/** What the classes alone allow, which five or more in each are for: not held to the bar, and told. */
export const byClassAlone = (people: readonly PersonFacts[]): string => {
  const { settled } = classesOf(people);
  const of = settled.reduce((sum, { members }) => sum + members.length, 0);
  const smallest = Math.min(...settled.map(({ members }) => members.length));
  return `sex, age band, joint and diagnosis alone: ${settled.length} of ${of}, guessing blindly 1.0; smallest class ${smallest}`;
};

export const inWords = ({ attack, of, found, guessed }: Outcome): string =>
  `${attack}: re-linked ${found.toFixed(1)} of ${of}, guessing within the class ${guessed.toFixed(1)}`;
