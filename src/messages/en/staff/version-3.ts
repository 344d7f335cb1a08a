/** Version 3: choices a clinic may switch on together. */
import { sayIn } from '../../say.ts';

export const words = {
  title: 'Version 3 is a set of settings below.',
  'filled-in': 'It is filled in.',
  'not-filled-in': 'It is not filled in.',
  swap: 'Pain before a session swaps it from 5 on and 2 over usual, and that session alone.',
  step: 'Repetitions rise one at a time.',
  twice: 'A dose counts as tolerated after two sessions without a complaint.',
  flare: 'In the first seven days of a flare the easier session stands in for a cut.',
  cut: 'A tolerated dose is cut for pain only when two of the last three mornings after a session were 2 or more over usual. Severe pain, swelling, a broken-off session and a longer flare cut at once as before.',
  invented:
    'It was tried on invented people alone. Nothing of it was seen in a person, and no physiotherapist has confirmed it.',
  'fill-in': 'Fill in version 3',
  'take-back': 'Fill in the settings as delivered',
  'in-force': 'The settings of version 3 are in force here: tried on invented people alone.',
} as const;

export const say = sayIn(words);
