/** Why an exercise rests for a reason outside the decision rules. */
import type { Suspension } from '#core/episode/suspensions.ts';

export const holds = {
  'care-closed': 'Your time with us has ended. You can still read everything here.',
  'on-break': 'You are on a break we agreed on. Nothing is planned until you are back.',
  returned: 'Welcome back. Ring us first: we will ask you some questions before you start again.',
  'after-event': 'Something has happened since you began. We will ask you some questions before you go on.',
  'no-consent':
    'You have not consented to this, or you withdrew your consent. Leave it out until we have spoken.',
  'taken-back': 'You withdrew your consent to the cuff. Leave out the exercise with it until we have spoken.',
} as const satisfies Readonly<Record<Suspension['code'] | 'taken-back', string>>;
