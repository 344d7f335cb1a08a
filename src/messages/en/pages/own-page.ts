/** A page open twice, weights and lengths of time. */
export const ownPageWords = {
  'skip.main': 'Skip to the page',
  'skip.pages': 'Pages',
  'elsewhere.title': 'This page is open in another window',
  'elsewhere.text': 'Go on there, or go on here. Answers are written in one window at a time.',
  'elsewhere.take-over': 'Go on here',
  'weight.kg': '{number} kg',
  'weight.lb': '{number} lb',
  'length.second': '{count} second',
  'length.seconds': '{count} seconds',
  'length.minute': '{count} minute',
  'length.minutes': '{count} minutes',
} as const;
