/** What a clinician and the front desk both do, each through the own procedures. */
import { client } from './client.ts';

export type Desk = 'clinician' | 'reception';

export const callsOf = {
  clinician: {
    book: client.clinician.bookings.book,
    add: client.clinician.people.create,
    changeDetails: client.clinician.people.changeDetails,
  },
  reception: {
    book: client.reception.book,
    add: client.reception.add,
    changeDetails: client.reception.changeDetails,
  },
} as const;

/** Under which address a person is opened. */
export const placeOf: Readonly<Record<Desk, string>> = { clinician: 'patients', reception: 'reception' };
