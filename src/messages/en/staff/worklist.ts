/** The worklist. */
import { sayIn } from '../../say.ts';

export const words = {
  checked:
    'Checked for each patient: warning signs, pauses, calls due today, doses eased back, conflicting entries, entries whose time may be wrong, prescriptions to sign, missing morning answers, routine reviews, messages, booked reviews, and screenings, cuff pressures and baselines that are out of date.',
  'not-checked': 'Not checked: anything not entered in Loadgate.',
  closed: {
    by: 'count',
    one: '{count} record belongs to care teams you are not in; only its urgent items are listed.',
    other: '{count} records belong to care teams you are not in; only their urgent items are listed.',
  },
  more: 'More patients',
  'more-of': 'More for {name}',
  acknowledged: 'acknowledged by {name}',
  assigned: 'assigned to {name}',
  'snooze-until': 'As YYYY-MM-DD, no more than 14 days ahead.',
  groups: 'Patients of the clinic',
  'group.needs-you': { by: 'count', one: '{count} needs you', other: '{count} need you' },
  'group.assigned': '{count} assigned to {names}',
  'group.snoozed': '{count} snoozed',
  'group.snoozed-until': '{count} snoozed until {until}',
  'group.paused': '{count} paused',
  'group.paused-until': '{count} paused until {until}',
  'group.not-screened': '{count} not yet screened',
  'group.nothing-found': '{count} nothing found',
  'group.discharged': '{count} discharged',
  'snoozed-until': 'until {until}',
  'assigned-with': 'with {names}',
  'filter.every-reason': 'every reason',
  'filter.every-site': 'every site',
  'filter.mine': 'assigned to me',
  'filtered.site': 'of {site}',
  'filtered.reason': 'with “{reason}”',
  'filtered.any-reason': 'with any reason',
  'filtered.mine': 'assigned to you',
} as const;

export const say = sayIn(words);
