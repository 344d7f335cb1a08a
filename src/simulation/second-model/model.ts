/** The second model of people, in the place of the first: made without knowing it, from the same evidence. */
import { seeded } from '../raises/seeded.ts';
import type { PeopleModel, TrialSettings } from '../trial/trial.ts';
import { followSecond } from './course.ts';
import { drawSecondPerson, type SecondPerson } from './drawn.ts';
import { secondTypes } from './people.ts';

const daysOfWeek = 7;
const streamOfType = 104_729;

type Size = Pick<TrialSettings, 'people' | 'weeks' | 'seed'>;

/** Person n of a type is the same however many are drawn and however long they are followed. */
export const secondPeople = (id: string, { people, weeks, seed }: Size): readonly SecondPerson[] => {
  const place = secondTypes.findIndex((type) => type.id === id);
  const type = secondTypes[place];
  if (!type) throw new RangeError(`There is no type of people "${id}".`);
  const random = seeded(seed + streamOfType * (place + 1));
  const days = Math.max(...weeks) * daysOfWeek;
  return Array.from({ length: people }, () => drawSecondPerson(type, days, seeded(random.below(2 ** 32))));
};

export const secondModel: PeopleModel = {
  types: secondTypes,
  *people(id, settings) {
    for (const person of secondPeople(id, settings)) yield (arm) => followSecond(person, arm);
  },
};
