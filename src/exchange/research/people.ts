/** A row a person: the class, a first week that says nothing of when it was, and what half of the class shares. */
import { createHmac } from 'node:crypto';
import { addDays, type Day, dayNumber } from '#core/time/day.ts';
import { notKnown, withheld } from './bands.ts';
import { fewestAlike, type PeopleClass } from './classes.ts';
import type { PersonFacts } from './facts.ts';

const courseColumns = ['painChange', 'weeksFollowed', 'sessionsSent'] as const;
export const personColumns = ['person', 'firstWeek', ...courseColumns] as const;

const secretOf = (key: Buffer, what: string, id: string): Buffer =>
  createHmac('sha256', key).update(`${what} ${id}`).digest();

/** New in each export: the key is drawn for it and kept nowhere. */
const idOf = (key: Buffer, { id }: PersonFacts): string =>
  secretOf(key, 'person', id).toString('hex').slice(0, 16);

/** Ten years. */
const weeksOfWindow = 520;

const mondayOf = (day: Day): Day => addDays(day, -((dayNumber(day) + 3) % 7));

/**
 * All days of a person move by one number of whole weeks. It is drawn so that the first week falls anywhere within
 * ten years, each as likely as the next, wherever it truly lay: a narrower draw would say roughly when it was.
 * The Monday stands for the week; the day of the week of a first session would part a class in five.
 */
const firstWeekOf = (key: Buffer, { id, firstDay }: PersonFacts, day: Day): Day => {
  const truly = (dayNumber(mondayOf(day)) - dayNumber(mondayOf(firstDay))) / 7;
  const drawn = secretOf(key, 'weeks', id).readUInt32BE(0);
  const ago = (((truly + drawn) % weeksOfWindow) + weeksOfWindow) % weeksOfWindow;
  return addDays(mondayOf(day), -ago * 7);
};

const halfOf = {
  painChange: ({ painChange }: PersonFacts): string => {
    if (painChange === null) return notKnown;
    return painChange <= -1 ? 'lower by 1 or more' : 'not lower by 1';
  },
  weeksFollowed: ({ days }: PersonFacts): string => (days < 12 * 7 ? 'under 12' : '12 or more'),
  sessionsSent: ({ sessions }: PersonFacts): string => (sessions < 24 ? 'under 24' : '24 or more'),
} as const satisfies Record<(typeof courseColumns)[number], (one: PersonFacts) => string>;

/** What is told of a course, the most first. */
const choices: readonly (readonly (typeof courseColumns)[number][])[] = [
  ['painChange', 'weeksFollowed', 'sessionsSent'],
  ['painChange', 'weeksFollowed'],
  ['painChange', 'sessionsSent'],
  ['painChange'],
  ['weeksFollowed', 'sessionsSent'],
  ['weeksFollowed'],
  ['sessionsSent'],
];

const courseOf = (one: PersonFacts, told: readonly string[]): readonly string[] =>
  courseColumns.map((name) => (told.includes(name) ? halfOf[name](one) : withheld));

/** Whether each course that is told is that of half of the class, and of enough people. */
const isShared = (members: readonly PersonFacts[], told: readonly string[]): boolean => {
  const counts = new Map<string, number>();
  for (const one of members) {
    const course = courseOf(one, told).join('|');
    counts.set(course, (counts.get(course) ?? 0) + 1);
  }
  return [...counts.values()].every((count) => count >= fewestAlike && count * 2 >= members.length);
};

export const personRowsOf = (
  classes: readonly PeopleClass[],
  { key, day }: { readonly key: Buffer; readonly day: Day },
): readonly (readonly string[])[] =>
  classes
    .flatMap(({ label, members }) => {
      const told = choices.find((choice) => isShared(members, choice)) ?? [];
      return members.map((one) => [
        idOf(key, one),
        firstWeekOf(key, one, day),
        ...courseOf(one, told),
        ...label,
      ]);
    })
    .sort(([one = ''], [other = '']) => (one < other ? -1 : 1));
