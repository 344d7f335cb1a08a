/** Who is told apart from whom: sex, age band, joint and diagnosis, each class with enough people in it. */
import { ageBands, jointWord, regionOf, withheld } from './bands.ts';
import type { PersonFacts } from './facts.ts';
import { type Settled, settle } from './settle.ts';

/** Nobody stands among fewer. */
export const fewestAlike = 5;

export const classColumns = ['sex', 'ageBand', 'joint', 'diagnosis'] as const;

const groupOf = ({ isInflammatory }: PersonFacts): string =>
  isInflammatory ? 'inflammatory arthritis' : 'not inflammatory';

/** From the narrowest: the age first, then the diagnosis, the joint, the sex and at last the age altogether. */
const levels: readonly ((one: PersonFacts) => readonly string[])[] = [
  (one) => [one.sex, ageBands.ten(one.ageYears), jointWord(one.joint), one.diagnosis],
  (one) => [one.sex, ageBands.twenty(one.ageYears), jointWord(one.joint), one.diagnosis],
  (one) => [one.sex, ageBands.two(one.ageYears), jointWord(one.joint), one.diagnosis],
  (one) => [one.sex, ageBands.two(one.ageYears), jointWord(one.joint), groupOf(one)],
  (one) => [one.sex, ageBands.two(one.ageYears), regionOf(one.joint), groupOf(one)],
  (one) => [withheld, ageBands.two(one.ageYears), regionOf(one.joint), groupOf(one)],
  (one) => [withheld, withheld, regionOf(one.joint), groupOf(one)],
];

/** Of rows that name nobody: joint and diagnosis alone, so that more people share what a row says. */
export const rowClassColumns = ['joint', 'diagnosis'] as const;

const rowLevels: readonly ((one: PersonFacts) => readonly string[])[] = [
  (one) => [jointWord(one.joint), one.diagnosis],
  (one) => [jointWord(one.joint), groupOf(one)],
  (one) => [regionOf(one.joint), groupOf(one)],
  (one) => [withheld, groupOf(one)],
];

export type PeopleClass = Settled<PersonFacts>;

const isClass = (members: readonly PersonFacts[]): boolean => members.length >= fewestAlike;

export const classesOf = (people: readonly PersonFacts[]) => settle(people, levels, isClass);

/** Of people who stand in a class of their own already, so that a row tells of nobody who was left out there. */
export const rowClassesOf = (classes: readonly PeopleClass[]): readonly PeopleClass[] =>
  settle(
    classes.flatMap(({ members }) => members),
    rowLevels,
    isClass,
  ).settled;
