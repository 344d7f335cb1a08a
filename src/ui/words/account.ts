/**
 * Setting up a phone, its PIN, and who opened the record. Whoever shows these reads this file; today's page,
 * which a slow line has to carry, does without.
 */
import { teach } from '../words.ts';

export const accountWords = {
  'join.title': 'Set up this phone',
  'join.code': 'Code from your clinic',
  'join.code-hint': 'Ten letters and digits, such as 4KQ7M-X2D9T. It works once.',
  'join.no-code': 'Enter the code on the paper from your clinic.',
  'join.go': 'Go on',
  'join.pin-title': 'Choose a PIN',
  'join.pin-why': 'You need it each time you open this page on this phone. It works on no other phone.',
  'join.pin': 'New PIN',
  'join.pin-hint': 'Six digits. Not a row such as 123456.',
  'join.again': 'The same PIN once more',
  'join.pin-shape': 'Enter six digits.',
  'join.pin-differs': 'The two PINs differ. Enter the same one twice.',
  'join.done': 'Keep this PIN',
  'pin.title': 'Enter your PIN',
  'pin.label': 'PIN of this phone',
  'pin.hint': 'Six digits',
  'pin.go': 'Open',
  'pin.forgotten': 'PIN forgotten? Ring your clinic. It can give you a new code for this phone.',
  'pin.spent': 'This phone needs a new code',
  'pin.spent-text': 'The PIN was wrong five times. Ring your clinic and ask for a new code.',
  'pin.new-code': 'I have a new code',
  'pin.passphrase': 'Sign in with a passphrase',
  'opened.text': 'Everyone at your clinic who looked at your record or wrote in it, newest first.',
  'opened.none': 'Nobody has opened your record yet.',
  'opened.unknown': 'Someone the clinic no longer lists, or the product itself',
  'opened.looked-one': 'Looked once',
  'opened.looked-many': 'Looked {count} times',
  'opened.wrote-one': 'wrote once',
  'opened.wrote-many': 'wrote {count} times',
  'opened.wrote-only-one': 'Wrote once',
  'opened.wrote-only-many': 'Wrote {count} times',
  'opened.with-reason': 'From outside your care team, with a written reason',
  'opened.handed-on': 'Gave your record away as a file, as you had agreed, to',
  'opened.ask': 'Is a name wrong here? Ring your clinic and ask.',
} as const;

teach(accountWords);
