/** The week of the exercises in force. */
import { sayIn } from '../../say.ts';

export const words = {
  template: 'Start from a template',
  caption: 'Weekdays of each exercise in force',
  refused: 'Correct the problems under “Cannot be saved”, then save again.',
  saved: 'Saved as version {version}; it applies from today.',
  save: 'Save the week',
  applies: 'Version {version} applies since {date}.',
  none: 'No week is planned yet. Until then each exercise stands on as many days as prescribed, spaced over the week; cuff work without a clinician on Monday, Wednesday and Friday only.',
  'no-prescription': 'No prescription is in force.',
  'prescribe-first': 'and sign an exercise first.',
  'days-match': '{ticked} of {prescribed} a week',
  'days-differ': '{ticked} chosen, {prescribed} a week prescribed',
  often: { by: 'prescribed', one: 'once a week', other: '{prescribed} times a week' },
  apart: {
    by: 'planned',
    one: 'Prescribed {often}, but the planned week has it on {planned} day, and the phone shows it on that day only. Change the days on the page Programme.',
    other:
      'Prescribed {often}, but the planned week has it on {planned} days, and the phone shows it on those. Change the days on the page Programme.',
  },
  'apart.none':
    'Prescribed {often}, but the planned week has no day for it, so the phone shows it on none. Choose its days on the page Programme.',
  sets: { by: 'count', one: '{count} set', other: '{count} sets' },
  days: { by: 'count', one: '{count} day', other: '{count} days' },
  occlusion: 'Occlusion, {sets}: {scheme}',
  band: '{low} to {high}',
  'low-load': 'Low load, {sets} of {band}',
  variation: 'Variation, {sets} of {band}',
  pair: 'worked on {first} and again on {last}',
  'cuff.twice':
    '{weekday}: two exercises with a cuff on the {where}. Plan only one; move the other to another day.',
  'cuff.often': 'A cuff on the {where} on {days} a week. The limit is {most}; remove a day.',
  'cuff.seldom': 'A cuff on the {where} on {days} a week; {least} to {most} is usual.',
  'session-long': '{weekday}: about {minutes} minutes.',
  'refused-title': 'Cannot be saved',
  summary: 'Week summary',
  lengths: 'Days and estimated length',
  'lengths.minutes': 'Minutes, about',
  'lengths.none': 'No day has an exercise yet.',
  muscles: 'Weekly sets per muscle; indirect sets count half',
  weekly: 'Weekly sets',
  'muscles-none': 'No muscle is worked yet.',
  'muscles-note':
    'Counting indirect sets as half fitted best across 67 studies (Pelland and others 2024, a preprint; abstract read). This is a count, not a target.',
} as const;

export const say = sayIn(words);
