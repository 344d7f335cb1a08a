/** What is entered of the next review; without a day, the booking is taken back. */
import type { Field } from '../calculations/describe.ts';

export const bookingFields = [
  { name: 'when', kind: 'date-time', mayLackTime: true, nullable: true, about: 'When' },
  { name: 'place', kind: 'text', minLength: 1, maxLength: 120, nullable: true, about: 'Place' },
] as const satisfies readonly Field[];
