/** A session of one set, for the screens that show what was sent. */
import { sessionEntry } from '#tests/support/clinic.ts';

export const worked = sessionEntry({
  entryId: 's',
  sets: [
    {
      prescriptionId: 'p',
      itemId: 'i',
      set: 1,
      repetitions: 9,
      loadKg: 2,
      reserve: null,
      stopReason: 'none',
    },
  ],
  joints: [
    {
      joint: 'left-knee',
      painBefore: 1,
      painDuring: 2,
      painAfter: null,
      twoHoursState: 'asked',
      muscleBurn: 3,
      cuffDiscomfort: 4,
      gaveWay: false,
    },
  ],
});
