/** Machines of the clinic. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Machines',
  lead: 'The machines of the clinic with the loads that exist on them. A dose on a machine is rounded to its loads, and the phone says that it is for the clinic.',
  compare:
    'Enter the kilograms as they stand on the machine. Those of two machines do not compare, whatever they are called.',
  add: 'Add a machine',
  save: 'Add the machine',
  taken: 'The machine is on the list.',
  'in-use': { by: 'count', one: 'In use: 1', other: 'In use: {count}' },
  retired: { by: 'count', one: 'Retired: 1', other: 'Retired: {count}' },
  'none-in-use': 'No machine is on the list. Exercises on machines cannot be prescribed until one is.',
  about: '{kind}, {loading}. {place}.',
  'kind.leg-press': 'Leg press',
  'kind.knee-extension': 'Knee extension',
  'kind.leg-curl': 'Leg curl',
  'kind.chest-press': 'Chest press',
  'kind.cable': 'Cable',
  'loading.stack': 'with a stack of plates',
  'loading.lever': 'with discs on a lever',
  loads: {
    by: 'count',
    one: '1 load: {low} kg.',
    other: '{count} loads, {low} to {high} kg, {apart} kg apart.',
  },
  'by.first': 'Entered by {name}, {at}.',
  'by.later': 'Corrected by {name}, {at}.',
  'by.retired': 'Retired by {name}, {at}.',
  earlier: { by: 'count', one: '1 earlier entry', other: '{count} earlier entries' },
  correct: 'Correct {name}',
  'correct.note':
    'Doses signed on it keep their load. Where it can no longer be set, the exercise rests, and desk, group hour and phone say why.',
  'correct.save': 'Save the correction',
  'correct.taken': 'Corrected. The entry before it stays readable.',
  retire: 'Retire',
  'retire.question':
    'Retire {name}? Doses signed on it stay signed, but their exercises rest from now on; desk, group hour and phone say why.',
  'bring-back': 'Bring back',
  'hint.place': 'Such as gym, by the window',
  'hint.first': 'The lightest load that can be set',
  'hint.half': 'With a small plate that lies on top, between two loads',
} as const;

export const say = sayIn(words);
