/** The front desk: appointments, names and numbers. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Appointments and numbers',
  find: 'Find by name',
  'find-go': 'Find',
  add: 'Add a patient',
  found: { by: 'count', one: '{count} person found.', other: '{count} people found.' },
  'found-none': 'Nobody of that name is on record here.',
  'found-more': '{count} more have that in their name: type more of it.',
  'found-named': 'Found for “{name}”',
  'all-appointments': 'All appointments',
  'none-booked': 'No appointment is booked from today on.',
  born: 'born {date}',
  'no-phone': 'no telephone recorded',
  'no-time': 'no time',
  'not-booked': 'no appointment',
  'next-is': 'Booked by {name}.',
  'birth-note': 'A wrong day of birth is corrected by a clinician: doses are worked out with the age.',
  'not-here':
    'Health records are opened by clinicians. Somebody who rings about a symptom or an exercise is put through to one.',
} as const;

export const say = sayIn(words);
