/** What a decision changes in a dose, one sentence an exercise. */
export const doseChanges = {
  stop: '{exercise}: stop until we have spoken with you.',
  same: '{exercise}: stay with it and do the same again.',
  'awaits-signature': '{exercise}: do the same again. Your physiotherapist is looking at a change.',
  changed: '{exercise}: {changes}.',
  'easier-now': '{exercise}: do the easier session for now.',
  'easier-then-changed': '{exercise}: do the easier session for now. After that {changes}.',
  'rest-now': '{exercise}: leave it out for now.',
  'rest-then-changed': '{exercise}: leave it out for now. After that {changes}.',
  'written-anew': '{exercise}: {name} has set this anew. Do it as it stands on this page.',
  'new-exercise': '{to} instead of {from}',
  'new-load': '{to} kg instead of {from} kg',
  'new-load-grams': '{to} g instead of {from} g',
  'new-hold': 'hold each one {to} seconds instead of {from}',
  'new-mark': 'the piece marked {to} instead of {from}',
  'new-sets': '{to} sets instead of {from}',
  'new-repetitions': '{to} repetitions instead of {from}',
} as const;
