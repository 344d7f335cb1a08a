/** Answers entered for the patient, from paper or by telephone. */
import { sayIn } from '../../say.ts';

export const words = {
  'one-reserve-a-set':
    'Repetitions in reserve, {exercise}: enter one number of 0 to {most} for each set, separated by commas, such as 2, 1, 1.',
  'enter-the-repetitions':
    'Repetitions of each set, {exercise}: enter whole numbers of 0 to 500, separated by commas, such as 15, 14, 12.',
  'asked-none': 'Asked: none',
  'holds-of-each-set': 'Holds of each set, held to their end',
  'repetitions-of-each-set': 'Repetitions of each set',
  'separate-sets-by-commas':
    'Separate sets by commas. Enter a dash for a set that was not counted. Leave it empty if the exercise was not done.',
  'weight-used': 'Weight used',
  'reserve-of-each-set': 'Repetitions in reserve, each set',
  'reserve-meaning': 'How many more the patient could have done. If left empty, the rules assume none.',
  'why-a-set-fell-short': 'Why a set fell short',
  'the-session': 'The session',
  'as-planned': 'As planned',
  'the-easier-session': 'The easier session',
  'did-more-than-planned': 'Did more than planned',
  'new-since-the-last-session': 'New since the last session',
  tiredness: 'Tiredness in the morning, 0 to 10',
  'another-joint-is-worse': 'Another joint is worse than usual',
  'another-joint-was-worse': 'Another joint was worse before the session',
  'extra-pain-relief': 'Extra pain relief',
  'warning-signs': 'Warning signs',
  'asked-one-by-one-none': 'Asked one by one: none',
  'call-the-patient':
    'Call the patient, act on it, and record what you did. “Not said” counts as not answered.',
  'no-warning-sign-here': 'Do not enter a warning sign here',
  saved: 'Saved. The rules have been applied.',
  'already-saved': 'This entry was already saved.',
  'differs-from-saved': 'This could not be saved: the same entry exists with different content.',
  'save-these-answers': 'Save these answers',
  'what-are-you-entering': 'What are you entering?',
  'where-from': 'Where do the answers come from?',
  'from-paper': 'From paper',
  'recorded-as-written': 'Recorded as written on that day.',
  'by-phone': 'By phone',
  'recorded-as-answered-now': 'Recorded as answered now.',
  'which-day': 'Which day are the answers for?',
  'choose-what': 'Choose what you are entering.',
  'choose-where-from': 'Choose where the answers come from.',
  'enter-the-day': 'Enter the day the answers are for.',
  'choose-the-session': 'Choose which session was done.',
  'not-said': 'Not said',
  'pain-before': 'Pain before, 0 to 10',
  'worst-pain': 'Worst pain in the session, 0 to 10',
  'pain-after': 'Pain after, 0 to 10',
  'gave-way': 'Gave way',
} as const;

export const say = sayIn(words);
