/** A group hour without signal: taken along under a PIN, opened without signal, and what waits to be sent. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Hour without signal',
  'take.title': 'No signal in the room? Take this hour along',
  'take.what':
    'First names and today’s plan of each person are sealed on this tablet under a PIN. No surname, birth date, diagnosis or number to ring goes along; a caution or limit may still let somebody guess at an illness. It takes the place of an hour sealed here before. It opens no more once a group hour’s page here has seen the time {after} minutes after the booked end, and is destroyed then; until then it lies on this tablet, sealed. Signing out here destroys it, and so do {tries} wrong tries.',
  'take.pin': 'PIN for this hour',
  'take.pin.hint':
    'From {least} to {most} digits, none that follow each other. Whoever copies this tablet can try out a short PIN elsewhere: choose a longer one where the tablet is not locked away.',
  'take.pin.digits': 'Enter from {least} to {most} digits and nothing else.',
  'take.pin.plain': 'This PIN is tried first by everybody. Choose one without a row of digits.',
  'take.tell': 'What tells {name} apart',
  'take.tell.hint':
    'Two people here have this first name. A word you both know, such as a colour of clothes; no surname.',
  'take.tell.missing': 'Enter a word for each, and not the same one.',
  take: 'Seal it on this tablet',
  'take.busy': 'Sealing…',
  'take.failed': 'It was not sealed: {why}',
  'take.no-answer': 'the clinic’s server does not answer.',
  'take.nobody':
    'nobody is left to take along: each was entered already, was begun on this page, or has answers that wait on this tablet.',
  'take.no-room':
    'this browser can keep no sealed hour. Use one with a secure connection that is not in private mode.',
  'take.not-held':
    'this browser could not keep the page that opens it without signal. Reload this page and try again.',
  taken: { by: 'count', one: 'Sealed for 1 person.', other: 'Sealed for {count} people.' },
  'taken.left-out': {
    by: 'count',
    one: '1 person was left out: entered already, or kept to a care team you are not in.',
    other: '{count} people were left out: entered already, or kept to a care team you are not in.',
  },
  'taken.begun':
    '{name} was left out: already begun on this page. Finish there, or enter what is done now from paper.',
  'taken.waits':
    '{name} was left out: answers from before wait on this tablet. Enter what is done now on paper.',
  'taken.open': 'Open the sealed hour once, to see that it opens',
  'taken.where': 'Without signal it opens at the same address with {address} behind it; a bookmark helps.',

  'open.title': 'An hour is sealed here',
  'open.pin': 'PIN of this hour',
  'open.go': 'Open it',
  'open.busy': 'Opening…',
  'open.wrong': {
    by: 'count',
    one: 'This is not the PIN. After 1 more wrong try the sealed hour is destroyed.',
    other: 'This is not the PIN. After {count} more wrong tries the sealed hour is destroyed.',
  },
  none: 'No sealed hour is here. It was not taken along, its time is over, the tablet was signed out, or the PIN was wrong too often.',
  'none.back': 'Group hours',
  'kept.rest': 'What was answered and not sent yet stays sealed for the clinic; nobody can read it here.',
  lock: 'Close it; the PIN is asked again',
  'put-away': 'Put the sealed hour away for good',
  'put-away.sure': 'It cannot be opened again. What was answered stays sealed here until it is sent.',
  'put-away.yes': 'Put it away',
  'put-away.no': 'Keep it',
  until: 'Open until {time}.',
  lead: 'The plan as it stood when the hour was sealed at {time}. What changed at the clinic since is not known here.',
  'old-plan': 'What stands or changed, and why, was not taken along.',
  'begun-only':
    'Finish each person you worked with. Who is only begun at the end is sent as far as they came, and not at all without a set or a warning sign.',
  'take-back': 'Pressed for {name} by mistake? Take it back',
  'take-back.sure': 'Take back everything pressed for {name} since the hour was sealed?',
  'take-back.yes': 'Take it back',
  'take-back.no': 'Keep it',
  'sent-here': 'Sealed for the clinic.',
  'sent-here.waits':
    'Not sent yet: it waits on this tablet, sealed, and goes by itself as soon as there is a signal. It can be corrected on the hour’s own page once it was sent.',
  'sent-here.arrived': 'With the clinic. It can be corrected on the hour’s own page.',
  'sent-here.aside':
    'At the clinic, and put aside there: another session of this person in this hour is on record. Nothing of this one counts; it is kept beside the other for review.',
  'sign.aside':
    'Put aside at the clinic: this sign does not count there, and the plan is not paused by it. Stop the session and report the sign on the hour’s own page.',
  'sign.reported':
    'With the clinic: the plan is paused, and it stands on the worklist. The session stays stopped.',
  'not-kept': 'What you pressed could not be kept on this tablet. Write it down on paper.',

  'put-aside': {
    by: 'count',
    one: 'Answers of 1 session were put aside at the clinic.',
    other: 'Answers of {count} sessions were put aside at the clinic.',
  },
  'put-aside.what':
    'Another session of the same person in the same hour is on record. Nothing of what was put aside counts, a warning sign neither; it is kept for review.',

  waiting: {
    by: 'count',
    one: 'Answers of 1 person wait on this tablet, sealed.',
    other: 'Answers of {count} people wait on this tablet, sealed.',
  },
  'waiting.urgent': 'A warning sign is among them. Nobody else can see it before it is sent.',
  'waiting.begun': 'What was only begun is sent as far as it came, once the sealed hour is gone.',
  'waiting.sign-in-as': 'What {name} took along is sent once {name} is signed in on this tablet.',
  'waiting.refused': 'The clinic did not take some of it: {why}',
  'waiting.send': 'Send now',
  'waiting.sign-in': 'Sign in',
} as const;

export const say = sayIn(words);
