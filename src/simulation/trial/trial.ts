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

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle)]!) / 2;
};

/** Where the people come from. Types are rows of a table, the same in every model. */
export interface PeopleModel {
  readonly types: readonly { readonly id: string }[];
  /** The courses of the people of a type under an arm; the same people, with the same days, under each. */
  readonly courses: (arm: Arm, type: string, settings: TrialSettings) => readonly (readonly DayOfCourse[])[];
}

export const firstModel: PeopleModel = {
  types: personTypes,
  courses: (arm, id, settings) =>
    personTypes
      .filter((type) => type.id === id)
      .flatMap((type) => peopleOf(type, settings))
      .map((person) => followCourse(person, arm, settings)),
};

const rowsOfType = (
  arm: Arm,
  type: string,
  settings: TrialSettings,
  model: PeopleModel,
): readonly TrialRow[] => {
  const courses = model.courses(arm, type, settings);
  return settings.weeks.map((weeks) => {
    const all = courses.map((days) => outcomesOf(days.slice(0, weeks * daysOfWeek)));
    const medianFinalDose = median(all.map(({ finalDose }) => finalDose));
    return { arm: arm.id, type, weeks, outcomes: meanOutcomes(all), medianFinalDose };
  });
};

/** For each number of weeks a row for each type, then one for their mean. */
export const trialRows = (
  arm: Arm,
  settings: TrialSettings,
  model: PeopleModel = firstModel,
): readonly TrialRow[] => {
  const all = model.types.flatMap(({ id }) => rowsOfType(arm, id, settings, model));
  return settings.weeks.flatMap((weeks) => {
    const rows = all.filter((row) => row.weeks === weeks);
    const medianFinalDose = rows.reduce((sum, row) => sum + row.medianFinalDose, 0) / rows.length;
    const outcomes = meanOutcomes(rows.map((row) => row.outcomes));
    return [...rows, { arm: arm.id, type: 'all', weeks, outcomes, medianFinalDose }];
  });
};
