/** How it went so far: for that page, which reads this file. */
import { teach } from '#messages/taught.ts';

export const historyWords = {
  'history.picture-title': 'Six weeks at a glance',
  'history.sum-one-session': '1 session since {day}.',
  'history.sum-sessions': '{count} sessions since {day}.',
  'history.sum-load': '{title}: {first} at the start of it, {last} last time.',
  'history.sum-repetitions': '{title}: {first} in all at the start of it, {last} last time.',
  'history.sum-pain-same': 'Pain in the morning in your {joint}: {low} each time.',
  'history.sum-pain': 'Pain in the morning in your {joint}: from {low} to {high}.',
  'history.picture-load': 'Weight used: {title}',
  'history.picture-repetitions': 'Repetitions in all: {title}',
  'history.picture-pain': 'Pain in the morning, 0 to 10',
  'history.picture-is': 'Picture of what the sentences above say, day by day.',
  'history.earlier': 'Days before that',
  'history.none': 'Nothing has been recorded yet. It starts with your first session.',
  'history.session': 'Session',
  'history.bad-day': 'Lighter day',
  'history.test': 'Test',
  'history.morning': 'Morning check',
  'history.pain-before': 'Pain before',
  'history.pain-during': 'Worst pain in the session',
  'history.pain-after': 'Pain after',
  'history.pain-morning': 'Pain in the morning',
  'history.flare': 'Flare',
  'history.not-counted': 'not counted',
  'history.what-next': 'What came of it for your {joint}',
  'history.why': 'Why',
} as const;

teach(historyWords);
