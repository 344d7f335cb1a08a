/** What a clinician and the front desk both do, each through the own procedures. */
import type { client } from './client.ts';

export type Desk = 'clinician' | 'reception';

export const callsFor = ({ clinician, reception }: typeof client) =>
  ({
    clinician: {
      book: clinician.bookings.book,
      add: clinician.people.create,
      changeDetails: clinician.people.changeDetails,
    },
    reception: { book: reception.book, add: reception.add, changeDetails: reception.changeDetails },
  }) as const;

/** As a form names it. */
export const deskFrom = (name: string | undefined): Desk =>
  name === 'reception' ? 'reception' : 'clinician';

/** Under which address a person is opened. */
export const placeOf: Readonly<Record<Desk, string>> = { clinician: 'patients', reception: 'reception' };
