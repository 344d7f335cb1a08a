/** Why an exercise rests for a reason outside the decision rules. */
import type { Suspension } from '#core/episode/suspensions.ts';

export const holds = {
  'care-closed': 'Ihre Zeit bei uns ist zu Ende. Sie können hier weiter alles lesen.',
  'on-break': 'Sie machen eine Pause, die wir vereinbart haben. Bis Sie zurück sind, ist nichts geplant.',
  returned:
    'Willkommen zurück. Rufen Sie uns zuerst an: Wir stellen Ihnen einige Fragen, bevor Sie wieder anfangen.',
  'after-event':
    'Seit Sie angefangen haben, ist etwas passiert. Wir stellen Ihnen einige Fragen, bevor Sie weitermachen.',
  'no-consent':
    'Sie haben nicht zugestimmt oder Ihre Zustimmung zurückgenommen. Lassen Sie diese Übung aus, bis wir gesprochen haben.',
  'taken-back':
    'Sie haben Ihre Zustimmung zur Manschette zurückgenommen. Lassen Sie die Übung damit aus, bis wir gesprochen haben.',
} as const satisfies Readonly<Record<Suspension['code'] | 'taken-back', string>>;
