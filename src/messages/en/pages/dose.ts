/** An exercise and its dose. */
export const words = {
  'dose.sets': { by: 'sets', one: '1 set of {low} to {high}', other: '{sets} sets of {low} to {high}' },
  'dose.sets-same': { by: 'sets', one: '1 set of {low}', other: '{sets} sets of {low}' },
  'dose.scheme': '{sets} sets: {scheme}',
  'dose.load': 'with {weight}',
  'dose.no-load': 'no weight',
  'dose.added': 'with {weight} added',
  'dose.rest': '{seconds} seconds rest between sets',
  'dose.weekly': 'Days a week: {count}',
  'dose.left': 'left side',
  'dose.right': 'right side',
  'dose.both': 'both sides',
  'dose.cuff': 'Cuff at {mmhg} mmHg',
  'dose.wrap': 'Wrap, tightness {tightness} of 10',
  'dose.pulse': 'Feel the pulse as you were shown',
  'cuff.supervised': 'Only with a clinician beside you, never alone',
  'dose.signed': 'Set by {name}.',
} as const;
