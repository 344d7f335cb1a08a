/** The clinic’s patients, and a new one. */
import { sayIn } from '../../say.ts';

export const words = {
  'same-birth-and-name': 'same day of birth and a similar name',
  'same-phone': 'same telephone number',
  'same-email': 'same email',
  'same-number': 'same patient number',
  'colleagues-patient': 'A colleague’s patient',
  'found-born': 'born {date}: {signs}',
  'add-this': 'Add this patient',
  added: 'Patient added. Opening the record.',
  'birth-hint': 'Such as 9 4 1961. Loadgate is for adults, 18 and over.',
  'phone-hint': 'The number the clinic calls. Leave it empty if there is none.',
  'on-record': 'Is this patient on record already?',
  'somebody-else': 'No, this is somebody else: add the patient',
  find: 'Find by name',
  add: 'Add a patient',
  'with-name': {
    by: 'all',
    one: '{count} of {all} patient with this name.',
    other: '{count} of {all} patients with this name.',
  },
  born: '{date}, {years} years',
  'no-phone': 'no telephone number',
  more: {
    by: 'count',
    one: '{count} more is not shown: type more of the name and press Enter.',
    other: '{count} more are not shown: type more of the name and press Enter.',
  },
} as const;

export const say = sayIn(words);
