/**
 * What a patient is asked to consent to, where the clinic has written no wording of its own. Proposed, to
 * be confirmed by a licensed clinician.
 */
import type { ConsentKind } from '#core/episode/consent.ts';
import type { Sentence } from '#messages/sentence.ts';

export const consents = {
  treatment:
    'Ich bin damit einverstanden, dass ich hier untersucht werde und die Übungen mache, die mir die Praxis verordnet. Mir wurde gesagt, wozu sie da sind und was sonst möglich ist. Ich weiß, dass Schmerz oder Schwellung eine Zeit lang zunehmen können. Ich kann jede Übung ablehnen. Ich kann jederzeit aufhören und muss keinen Grund nennen.',
  'record-keeping':
    'Die Praxis führt eine Akte über meine Antworten, Messungen und Übungen, damit sie über meine Behandlung entscheiden kann. Ich kann fragen, was darin steht. Ziehe ich das zurück, besprechen wir, was daraus folgt. Was schon in der Akte steht, muss die Praxis vielleicht laut Gesetz aufbewahren.',
  'occlusion-supervised':
    'Während ich übe, drückt eine Manschette oder Binde auf einen Arm oder ein Bein und bremst dort den Blutfluss. Eine Physiotherapeutin oder ein Physiotherapeut bleibt bei mir. In einer Umfrage mit {people} Antworten hatte etwa 1 von {numbness} Personen ein Taubheitsgefühl. Etwa 1 von {faint} fühlte sich schwindlig oder einer Ohnmacht nahe, und etwa 1 von {bruise} hatte einen blauen Fleck. Blutgerinnsel und Muskelschäden sind vorgekommen. Sie waren selten. Leichtere Gewichte ohne Manschette sind eine andere Möglichkeit. Bei Arthrose und Arthritis ist nicht gezeigt, dass die Manschette mehr bringt als gewöhnliches Training. Ich kann jederzeit aufhören und muss keinen Grund nennen.',
  'occlusion-unsupervised':
    'Ich mache das zu Hause, allein, und niemand sieht mir zu. Ich kann die Manschette allein und mit jeder der beiden Hände abnehmen. Geht das Telefon aus, nehme ich sie ab. Ich nehme sie sofort ab, wenn Taubheit oder Kribbeln nicht innerhalb einer Minute nachlässt. Ebenso bei stechendem Schmerz oder wenn meine Nägel blass, grau oder bläulich werden. Ich kann jederzeit aufhören und muss keinen Grund nennen.',
  'remote-monitoring':
    'Die Praxis liest zu den hier genannten Zeiten, was ich sende. Außerhalb dieser Zeiten liest es niemand. Was ich sende, ist kein Hilferuf. Fühle ich mich in Gefahr, rufe ich den Notruf an.',
  sharing:
    'Die Praxis darf meiner Ärztin, meinem Arzt und anderen Behandelnden sagen, wie es mir mit Übungen und Gelenken geht. Ich kann jederzeit fragen, wer was erfahren hat.',
  export:
    'Die Praxis darf eine Kopie meiner Akte als Datei herausgeben, an mich oder an jemanden, den ich nenne.',
} as const satisfies Readonly<Record<ConsentKind, Sentence>>;
