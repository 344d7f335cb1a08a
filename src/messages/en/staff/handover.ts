/** The page for the colleague. */

import { sayIn } from '../../say.ts';
import { onScreenToo } from '../colleagues/handover.ts';

export const words = {
  ...onScreenToo,
  by: 'By {name}.',
  'until-lifted': 'until lifted',
  until: 'until {end}',
  ended: 'ended {end}; it still applies until it is reviewed',
  'no-more-than-kg': 'no more than {load} kg',
  'set-by': 'Set by {author}.',
  'every-limb': 'Every limb.',
  'signed-by': 'Signed by {name}.',
  'who-follows-it-up': 'Who follows it up',
  'date-two-weeks': 'No more than two weeks ahead.',
  'follow-it-up': 'Follow it up',
} as const;

export const say = sayIn(words);
