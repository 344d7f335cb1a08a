/** What other settings would have said: of one person, of the clinic, and before a setting is saved. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'What if',
  'title.clinic': 'What if, for the whole clinic',
  back: 'Back to the review',
  'back.rules': 'Back to the rules',
  lead: 'The rules are run again over what was logged, each day on what was known on that day, with the settings of that day and with the ones below.',
  warning:
    'The person would have answered differently to another dose. This says what the rules would have said of the answers that were given. It does not say what would have happened.',
  'of-joint': 'Usual values of a joint, as though they had held all along',
  'of-clinic': 'A setting of the clinic',
  joint: 'Joint',
  limit: 'Acceptable pain limit, 5 to 7',
  usual: 'Usual pain, 0 to 10',
  band: 'Top of the usual band, points over usual pain, 0 to 2',
  'left-out': 'What you leave empty stays as it was.',
  setting: 'Setting',
  'setting.now': '{title} (now {value})',
  value: 'Value to try',
  weeks: 'Weeks to look back over, 1 to 52',
  go: 'Show what it would have changed',
  'choose-first': 'Choose a joint and type a value, or choose a setting and type a value.',
  'dose-left-out': 'Settings that change only the dose are not in the list: doses are not worked out again.',
  working: 'Working it out: {done} of {of} people.',
  beginning: 'Working it out.',
  stop: 'Stop',
  heading: 'What it would have changed',
  looked: 'Looked at: {looked} days of joints since {date}.',
  'none-differ': 'On no day would the answer have been another one. Doses were not worked out again.',
  differ: {
    by: 'patients',
    one: '{differing} days would have differed, of one patient: {cautious} more cautious, {bolder} bolder, {other} the same decision with another step, advice or contact.',
    other:
      '{differing} days would have differed, of {patients} patients: {cautious} more cautious, {bolder} bolder, {other} the same decision with another step, advice or contact.',
  },
  'way.more-cautious': 'More cautious',
  'way.bolder': 'Bolder',
  'by-word': 'Days by what they would have been',
  pause: 'Stopped',
  'ease-back': 'Eased back',
  hold: 'Held',
  progress: 'Progressed',
  differing: 'Days that would have differed',
  closed: {
    by: 'count',
    one: '1 person with such days belongs to a care team you are not in: counted above, not listed.',
    other: '{count} people with such days belong to care teams you are not in: counted above, not listed.',
  },
  patient: 'Patient',
  day: 'Day',
  was: 'Was',
  'would-be': 'Would have been',
  rules: 'Rules that differ',
  'same-rules': 'none; the same rules ask for something else',
  'weeks.key': {
    by: 'weeks',
    one: 'One mark for each day that would have been another, by week: filled is more cautious, outlined is bolder.',
    other:
      'One mark for each day that would have been another, {weeks} weeks together: filled is more cautious, outlined is bolder.',
  },
  'weeks.oldest': 'week of {date}',
  'weeks.newest': { by: 'weeks', one: 'this week', other: 'these {weeks} weeks' },
  'before-saving': 'Show what these values would have changed in 12 weeks',
  'not-read': 'Type the values first.',
} as const;

export const say = sayIn(words);
