/** Answers typed by somebody else; language, units, and how a clock says that it is over. */
import { teach } from '#messages/taught.ts';

export const seldomWords = {
  'entered.title': 'Somebody else types the answers',
  'entered.about': 'Say what the patient tells you. Leave open what the patient doesn’t know.',
  'entered.who': 'Who are you?',
  'entered.relative': 'A relative',
  'entered.friend': 'A friend or neighbour',
  'entered.paid-carer': 'A carer',
  'entered.leave': 'The patient has asked me to type the answers',
  'entered.leave-missing': 'Tick this once the patient has asked you to.',
  'entered.go': 'Type for the patient',
  'entered.now': 'Answers are typed by: {who}',
  'entered.stop': 'The patient types again',
  'preferences.title': 'Language and weights',
  'preferences.language': 'Language',
  'preferences.clinic-words':
    'What your clinic writes itself stays in its language. Nobody has checked this translation yet.',
  'preferences.unit': 'Weights in',
  'preferences.kg': 'Kilograms (kg)',
  'preferences.lb': 'Pounds (lb)',
  'preferences.sound': 'When a rest or the time with a cuff is over',
  'preferences.sound-none': 'Show it only',
  'preferences.sound-buzz': 'Buzz',
  'preferences.sound-tone': 'Buzz and sound',
} as const;

teach(seldomWords);
