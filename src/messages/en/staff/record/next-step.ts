/** The next thing to do for a person, as the bar of the record names it. */
import { sayIn } from '../../../say.ts';

export const words = {
  next: 'Next',
  nothing: 'Nothing on the worklist',
  here: 'on this page',
  about: '{what}: {joint-name}',
  'first-visit': 'First visit: {step}',
  screen: 'Screen',
  'ask-consent': 'Ask for consent to treatment',
  'follow-joint': 'Name the joint to follow',
  'set-baseline': 'Set the baseline',
  'record-contact': 'Record the contact',
  'ring-today': 'Ring today',
  resume: 'Resume or keep the pause',
  speak: 'Speak about the dose',
  'answer-ease-back': 'Read the ease-back',
  'settle-entries': 'Settle conflicting entries',
  'check-clock': 'Check the phone’s clock',
  'ask-for-answers': 'Ask why mornings are missing',
  reply: 'Write back',
  'read-news': 'Read what is new',
  'screen-after-event': 'Screen again after the event',
  'screen-again': 'Screen again',
  'confirm-answers': 'Confirm the answers sent ahead',
  'phase-due': 'See to the next phase',
  'limit-ended': 'Decide on the limit that ended',
  review: 'Review',
  'review-booked': 'Review as booked',
  'record-return': 'Record the return',
  'override-ended': 'Look at the override that ended',
  'measure-pressure': 'Measure the cuff pressure anew',
  retest: 'Measure again what is due',
  'baseline-due': 'Set the baseline anew',
  sign: 'Sign the waiting dose',
} as const;

export const say = sayIn(words);
