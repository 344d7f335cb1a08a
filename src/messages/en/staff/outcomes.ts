/** Outcomes: goals, and each thing measured over time. */
import { sayIn } from '../../say.ts';

export const words = {
  'goal.set': 'Set this goal',
  'goal.day-hint': 'As YYYY-MM-DD; leave empty if no date was agreed.',
  first: 'first {value}, {date}',
  'by-day-passed': 'to be reached by {date}, which has passed',
  'by-day': 'to be reached by {date}',
  'recorded-by': 'recorded by {name}, {time}',
  'set-at-start': 'set at the start of the episode',
  progress: 'Record progress',
  goals: 'Goals set with the patient',
  'no-goal': 'No goal is set yet.',
  'set-goal': 'Set a goal',
  change: 'Change: {sentence}',
  again: 'Measure again',
  calculation: 'Calculation and source',
  readings: 'Every reading, oldest first',
  'measures-note':
    'The latest reading beside the first. A difference counts as a change only when it exceeds the measurement error. This does not show what caused it.',
  none: 'No outcome is measured yet.',
  record: 'Record a measurement',
} as const;

export const say = sayIn(words);
