/** Why an exercise rests, or only its easier session is left, for a reason outside the decision rules. */
import type { HoldCode } from '../../hold-code.ts';

export const holds = {
  'care-closed': 'Ihre Zeit bei uns ist zu Ende. Sie können hier weiter alles lesen.',
  'on-break': 'Sie machen eine Pause, die wir vereinbart haben. Bis Sie zurück sind, ist nichts geplant.',
  returned:
    'Willkommen zurück. Rufen Sie uns zuerst an: Wir stellen Ihnen einige Fragen, bevor Sie wieder anfangen.',
  'after-event':
    'Seit Sie angefangen haben, hat sich an Ihrer Gesundheit oder Behandlung etwas geändert. Wir stellen Ihnen einige Fragen, bevor Sie weitermachen.',
  'no-consent':
    'Sie haben nicht zugestimmt oder Ihre Zustimmung zurückgenommen. Lassen Sie diese Übung aus, bis wir gesprochen haben.',
  finding:
    'Es wurde etwas festgestellt, oder Sie haben uns etwas gesagt, das wir zuerst klären müssen. Lassen Sie die unten gekennzeichneten Übungen aus, bis wir gesprochen haben.',
  'limit-closes':
    'Für eines Ihrer Gelenke gilt eine Grenze. Lassen Sie die unten gekennzeichneten Übungen aus, bis wir gesprochen haben.',
  'limit-load':
    'Für eines Ihrer Gelenke gilt eine Grenze beim Gewicht. Machen Sie das leichtere Training, das hier steht, bis wir etwas Neues mit Ihnen vereinbart haben.',
  'machine-gone':
    'Ein Gerät, an dem Sie in der Praxis trainieren, steht dort nicht mehr zur Verfügung. Lassen Sie diese Übung aus, bis wir etwas Neues mit Ihnen vereinbart haben.',
  'machine-load-gone':
    'Ein Gewicht, das wir mit Ihnen vereinbart haben, lässt sich an seinem Gerät in der Praxis nicht mehr einstellen. Lassen Sie diese Übung aus, bis wir etwas Neues mit Ihnen vereinbart haben.',
  'news-today': 'Sie haben uns gesagt, dass etwas neu ist. Lassen Sie die Manschette heute weg.',
  'gap-easier':
    'Ihr letztes Training ist eine Weile her. Fangen Sie mit dem leichteren Training an, das hier steht.',
  'gap-ring-first': 'Ihr letztes Training ist eine Weile her. Rufen Sie uns an, bevor Sie wieder trainieren.',
  'injection-easier':
    'Sie haben vor Kurzem eine Spritze in ein Gelenk bekommen. Machen Sie bei den Übungen, die es brauchen, das leichtere Training, das hier steht.',
  'warning-sign': 'Ein Warnzeichen wurde gemeldet: Machen Sie nichts davon, bis wir gesprochen haben.',
  paused: 'Wir haben es angehalten: Machen Sie nichts davon, bis wir gesprochen haben.',
  'taken-back':
    'Sie haben Ihre Zustimmung zur Manschette zurückgenommen. Lassen Sie die Übung damit aus, bis wir gesprochen haben.',
} as const satisfies Readonly<Record<HoldCode, string>>;
