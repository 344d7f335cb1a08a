/** The list of calculations, and one to try. */
import { sayIn } from '../../say.ts';

export const words = {
  'no-result': 'The example gives no result.',
  'try-it': 'Try it',
  'example-filled-in': 'The example is filled in. Nothing you type here is saved.',
  'the-example-gives': 'The example gives',
  'strength-and-low-load': 'Strength and low load',
  'read-at-the-source': 'read at the source',
  'from-memory': 'from memory',
  'computed-here': 'computed here',
  'set-by-this-project': 'set by this project',
  'common-practice': 'common practice',
  count:
    '{count} calculations. Each names its source and how the source was read; figures from memory are marked.',
  rules: 'The rules that progress, hold, ease back or pause a dose',
  'whole-number': 'whole number',
  'one-of': 'one of: {values}',
  day: 'day',
  'yes-or-no': 'yes or no',
  'day-and-time': 'a day and a time of day',
  list: 'list: {of}',
  search: 'Search the calculations',
  'search.hint':
    'By name, by what you want to know, or in German: timed up and go, heaviest weight, Blutdruck',
  'search.go': 'Search',
  'search.found': '{count} found for “{words}”',
  'search.none': 'Nothing is found for “{words}”. Try fewer or other words.',
  unrounded: 'Unrounded',
  changed: 'You have changed the figures. Calculate again to see their result.',
  inputs: { by: 'count', one: 'The input and its bounds', other: '{count} inputs and their bounds' },
  id: 'In the batch command: {id}',
  'several-below': 'several, below',
  over: 'over {min}',
  from: 'from {min}',
  to: 'to {max}',
  'may-be-left-out': 'may be left out',
  'may-be-not-answered': 'may be “not answered”',
} as const;

export const say = sayIn(words);
