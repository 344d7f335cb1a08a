/** What a patient is asked to consent to, where the clinic has written no wording of its own. */
import type { ConsentKind } from '#core/episode/consent.ts';

export const consents = {
  'occlusion-supervised':
    'Eine Manschette oder ein Wickel staut das Blut in einem Arm oder Bein, während ich übe. Eine Fachperson bleibt neben mir. Es kann weh tun, Spuren oder Taubheit hinterlassen und selten zu einem Blutgerinnsel, einer Ohnmacht oder einem Muskelschaden führen. Ich kann jederzeit aufhören und brauche keinen Grund.',
  'occlusion-unsupervised':
    'Ich mache das zu Hause, allein. Niemand sieht mir zu. Ich kann die Manschette allein und mit jeder der beiden Hände abnehmen. Geht das Telefon aus, nehme ich sie ab. Ich nehme sie ab bei Taubheit, bei stechendem Schmerz oder wenn Arm oder Bein weiß oder blau wird. Ich kann jederzeit aufhören und brauche keinen Grund.',
  'remote-monitoring':
    'Die Praxis sieht zu den hier genannten Zeiten an, was ich sende, und zu anderen Zeiten nicht. Was ich sende, ist kein Hilferuf. Fühle ich mich in Gefahr, rufe ich den Notruf an.',
  sharing:
    'Die Praxis darf meinem Arzt, meiner Ärztin und anderen, die mich behandeln, sagen, wie es mit Übungen und Gelenken geht. Ich kann fragen, wem was gesagt wurde.',
  export:
    'Die Praxis darf eine Kopie meiner Akte als Datei weitergeben, an mich oder an jemanden, den ich nenne.',
} as const satisfies Readonly<Record<ConsentKind, string>>;
