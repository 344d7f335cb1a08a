/** The episode of care and its changes. */
import { sayIn } from '../../say.ts';

export const words = {
  'on-break-means': 'Nothing is planned or asked until the patient returns.',
  'ends-all-prescriptions':
    'Ends all prescriptions and settles worklist items. Acknowledge any urgent item first.',
  'ends-everything-at-once': 'Ends everything at once.',
  'kind-of-break': 'Kind of break',
  'expected-back': 'Expected back',
  'back-unknown': 'Leave empty if not known.',
  'first-day': 'First day',
  'record-the-change': 'Record the change',
  'reason-for-opening': 'Reason for opening the episode',
  'open-this-episode-of-care': 'Open this episode of care',
  'one-per-line': 'One per line.',
  'goals-one-per-line': 'One per line, as the patient says it.',
  'one-or-two-joints':
    'Up to six. The patient is asked about each of them every morning; a session asks about one or two, and of more about those its exercises load.',
  'contacts-one-per-line': 'One per line: role; name; telephone.',
  'not-recorded': 'not recorded',
  'joints-affected': 'Joints affected',
  'asked-about-daily': 'Asked about daily',
  'in-the-patients-words': 'In the patient’s words',
  'referred-by': 'Referred by',
  'other-contacts': 'Other contacts',
  'changes-newest-first': 'Changes, newest first',
  'changed-on': 'from {on}: {reason}',
  'expected-back-on': 'Expected back {on}.',
  'recorded-by': 'Recorded by {by}.',
  'self-management-handout': 'Self-management handout',
  'record-a-change': 'Record a change',
  closed: 'Closed. You can still read everything. If the patient returns, open a new episode of care.',
  'break-and-end':
    'During a break nothing is planned or asked, and nothing counts as missed. When the patient returns, repeat the screening. Ending care ends all prescriptions and worklist items; the record stays readable.',
  'no-episode-of-care': 'No episode of care is recorded yet.',
  'open-another-episode-of-care': 'Open another episode of care',
  'in-care': 'In care',
  'on-a-break': 'On a break',
  'care-begins': 'Care begins',
  'begin-a-break': 'Begin a break',
  'in-hospital': 'in hospital',
  'opens-with-the-first-visit': 'An episode of care opens with the first visit: enter why the patient comes',
  'put-right': 'Put diagnosis and joints right',
} as const;

export const say = sayIn(words);
