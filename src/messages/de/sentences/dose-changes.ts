/** What a decision changes in a dose, one sentence an exercise. */

import type { doseChanges as english } from '#messages/en/sentences/dose-changes.ts';
import type { Same } from '#messages/sentence.ts';

export const doseChanges = {
  stop: '{exercise}: nicht mehr machen, bis wir mit Ihnen gesprochen haben.',
  same: '{exercise}: Bleiben Sie dabei und machen Sie dasselbe noch einmal.',
  'awaits-signature':
    '{exercise}: Machen Sie dasselbe noch einmal. Ihre Physiotherapeutin oder Ihr Physiotherapeut prüft eine Änderung.',
  changed: '{exercise}: {changes}.',
  'easier-now': '{exercise}: vorerst das leichtere Training.',
  'easier-then-changed': '{exercise}: vorerst das leichtere Training. Danach {changes}.',
  'rest-now': '{exercise}: vorerst auslassen.',
  'rest-then-changed': '{exercise}: vorerst auslassen. Danach {changes}.',
  'written-anew':
    '{exercise}: {name} hat das neu festgelegt. Machen Sie es so, wie es auf dieser Seite steht.',
  'new-exercise': '{to} statt {from}',
  'new-load': '{to} kg statt {from} kg',
  'new-load-grams': '{to} g statt {from} g',
  'new-hold': 'jedes Mal {to} statt {from} Sekunden halten',
  'new-mark': 'das Stück mit der Nummer {to} statt {from}',
  'new-sets': '{to} statt {from} Sätze',
  'new-holds': '{to}-mal statt {from}-mal halten',
  'new-repetitions': '{to} statt {from} Wiederholungen',
} as const satisfies Same<typeof english>;
