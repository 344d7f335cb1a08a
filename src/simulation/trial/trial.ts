/** Arms beside each other on the same invented people: the same days befall each person under every arm. */
import { seeded } from '../raises/seeded.ts';
import type { Arm } from './arm.ts';
import { type DayOfCourse, followCourse } from './course.ts';
import { type DrawnPerson, drawPerson } from './drawn-days.ts';
import type { JointSettings } from './invented-joint.ts';
import { meanOutcomes, type Outcomes, outcomesOf } from './outcomes.ts';
import { type PersonType, personTypes } from './person-types.ts';

export interface TrialSettings extends JointSettings {
  /** After how many weeks each course is looked at; the longest decides how long it is. */
  readonly weeks: readonly number[];
  /** Of each type. */
  readonly people: number;
  readonly seed: number;
}

export interface TrialRow {
  readonly arm: string;
  /** A type of people, or "all" for the mean of the types. */
  readonly type: string;
  readonly weeks: number;
  readonly outcomes: Outcomes;
  /** Middle of the final doses, as a share of the first; for "all" the mean of the types. */
  readonly medianFinalDose: number;
}

const daysOfWeek = 7;
const seeds = 0x1_0000_0000;

/** Person n of a type is the same however many are drawn and however long they are followed. */
export const peopleOf = (
  type: PersonType,
  { people, weeks, seed }: Pick<TrialSettings, 'people' | 'weeks' | 'seed'>,
): readonly DrawnPerson[] => {
  const random = seeded(seed + 7_919 * personTypes.indexOf(type));
  const days = Math.max(...weeks) * daysOfWeek;
  return Array.from({ length: people }, () => drawPerson(type, days, seeded(random.below(seeds))));
};

/** A person who can be followed under any arm, with the same days under each. */
type Followed = (arm: Arm) => readonly DayOfCourse[];

/** Where the people come from. Types are rows of a table, the same in every model. */
export interface PeopleModel {
  readonly types: readonly { readonly id: string }[];
  readonly people: (type: string, settings: TrialSettings) => Iterable<Followed>;
}

export const firstModel: PeopleModel = {
  types: personTypes,
  *people(id, settings) {
    const type = personTypes.find((one) => one.id === id);
    if (!type) throw new RangeError(`There is no type of people "${id}".`);
    for (const person of peopleOf(type, settings)) yield (arm) => followCourse(person, arm, settings);
  },
};

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle)]!) / 2;
};

const rowOf = (
  arm: string,
  type: string,
  weeks: number,
  courses: readonly (readonly DayOfCourse[])[],
): TrialRow => {
  const all = courses.map((days) => outcomesOf(days.slice(0, weeks * daysOfWeek)));
  const medianFinalDose = median(all.map(({ finalDose }) => finalDose));
  return { arm, type, weeks, outcomes: meanOutcomes(all), medianFinalDose };
};

const meanRow = (arm: string, weeks: number, rows: readonly TrialRow[]): TrialRow => {
  const medianFinalDose = rows.reduce((sum, row) => sum + row.medianFinalDose, 0) / rows.length;
  const outcomes = meanOutcomes(rows.map((row) => row.outcomes));
  return { arm, type: 'all', weeks, outcomes, medianFinalDose };
};

/**
 * For each number of weeks a row for each type, then one for their mean. Stops after each person, so that
 * whoever runs it can do something else in between.
 */
export function* trialSteps(
  arm: Arm,
  settings: TrialSettings,
  model: PeopleModel = firstModel,
): Generator<void, readonly TrialRow[]> {
  const all: TrialRow[] = [];
  for (const { id } of model.types) {
    const courses: (readonly DayOfCourse[])[] = [];
    for (const follow of model.people(id, settings)) {
      courses.push(follow(arm));
      yield;
    }
    all.push(...settings.weeks.map((weeks) => rowOf(arm.id, id, weeks, courses)));
  }
  return settings.weeks.flatMap((weeks) => {
    const rows = all.filter((row) => row.weeks === weeks);
    return [...rows, meanRow(arm.id, weeks, rows)];
  });
}

export const trialRows = (arm: Arm, settings: TrialSettings, model?: PeopleModel): readonly TrialRow[] => {
  const steps = trialSteps(arm, settings, model);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
};
