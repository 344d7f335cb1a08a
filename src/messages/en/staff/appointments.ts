/** Appointments. */
import { sayIn } from '../../say.ts';

export const words = {
  'not-given': 'not given',
  'your-appointment-today': 'Your appointment today is by {place}',
  'locked-until-you-meet':
    'Locked until you meet in person: {tests}. Do not do a first session with a cuff remotely. If the call drops, ring {phone}; the patient is at: {whereabouts}.',
  'begin-an-appointment': 'Begin an appointment',
  'call-back-number': 'Call-back number',
  'held-by': 'Held by',
  'patient-at': 'patient at: {whereabouts}',
  'nobody-else-named': 'nobody else named',
  'no-appointment-is-recorded': 'No appointment is recorded.',
  'for-video-or-telephone-where': 'Needed for video or telephone: where to send help.',
  'needed-for-video': 'Needed for video or telephone.',
  'one-per-line-a-carer': 'One per line: a carer, an interpreter, a nurse.',
} as const;

export const say = sayIn(words);
