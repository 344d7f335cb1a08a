/** Why an exercise rests, or only its easier session is left, for a reason outside the decision rules. */
import type { HoldCode } from '../../hold-code.ts';

export const holds = {
  'care-closed': 'Your time with us has ended. You can still read everything here.',
  'on-break': 'You are on a break we agreed on. Nothing is planned until you are back.',
  returned: 'Welcome back. Ring us first: we will ask you some questions before you start again.',
  'after-event':
    'Something about your health or treatment has changed since you began. We will ask you some questions before you go on.',
  'no-consent':
    'You have not consented to this, or you withdrew your consent. Leave it out until we have spoken.',
  finding:
    'We found something, or you told us something, that we have to check first. Leave out the exercises marked below until we have spoken.',
  'limit-closes':
    'There is a limit for one of your joints. Leave out the exercises marked below until we have spoken.',
  'limit-load':
    'There is a limit on weight for one of your joints. Do the easier session shown here until we give you a new dose.',
  'machine-gone':
    'A machine you train on at the clinic is no longer in use there. Leave that exercise out until we give you a new dose.',
  'machine-load-gone':
    'A load you were given can no longer be set on its machine at the clinic. Leave that exercise out until we give you a new dose.',
  'news-today': 'You told us that something is new. Leave the cuff off today.',
  'gap-easier': 'Your last session was a while ago. The first one back is the easier session shown here.',
  'gap-ring-first': 'Your last session was a while ago. Ring us before you train again.',
  'injection-easier':
    'A joint was injected a short while ago. Do the easier session shown here for the exercises that use it.',
  'warning-sign': 'A warning sign was reported: do none of it until we have spoken.',
  paused: 'We have paused it: do none of it until we have spoken.',
  'taken-back': 'You withdrew your consent to the cuff. Leave out the exercise with it until we have spoken.',
} as const satisfies Readonly<Record<HoldCode, string>>;
