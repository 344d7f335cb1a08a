/** How it went so far. */
export const historyWords = {
  'history.title': 'How it went',
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
  'history.score': '{score} of 10',
  'history.not-counted': 'not counted',
  'history.what-next': 'What came of it for your {joint}',
  'history.why': 'Why',
} as const;
