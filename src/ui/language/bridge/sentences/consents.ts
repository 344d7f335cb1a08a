import type { Sentences } from '../translator.ts';

/**
 * What each proposed agreement says, in German. A wording the clinic wrote itself stays in the words it
 * was written in. Read by nobody yet; agreeing to a translation is agreeing to the version it translates.
 */
export const consentSentences: Sentences = {
  'A cuff or wrap holds back blood in one arm or leg while I exercise. A clinician stays beside me. It can hurt, leave marks or numbness, and rarely cause a clot, a fainting spell or muscle damage. I can stop at any time and need no reason.':
    'Eine Manschette oder ein Wickel staut das Blut in einem Arm oder Bein, während ich übe. Eine Fachperson bleibt neben mir. Es kann weh tun, Spuren oder Taubheit hinterlassen und selten zu einem Blutgerinnsel, einer Ohnmacht oder einem Muskelschaden führen. Ich kann jederzeit aufhören und brauche keinen Grund.',
  'I do this at home, alone. Nobody watches me. I can take the cuff off by myself with either hand. If the phone stops, I take it off. I take it off at numbness, sharp pain, or a limb that turns white or blue. I can stop at any time and need no reason.':
    'Ich mache das zu Hause, allein. Niemand sieht mir zu. Ich kann die Manschette allein und mit jeder der beiden Hände abnehmen. Geht das Telefon aus, nehme ich sie ab. Ich nehme sie ab bei Taubheit, bei stechendem Schmerz oder wenn Arm oder Bein weiß oder blau wird. Ich kann jederzeit aufhören und brauche keinen Grund.',
  'The clinic looks at what I send during the hours shown here, and not at other times. What I send is no call for help. If I feel in danger, I ring the emergency number.':
    'Die Praxis sieht zu den hier genannten Zeiten an, was ich sende, und zu anderen Zeiten nicht. Was ich sende, ist kein Hilferuf. Fühle ich mich in Gefahr, rufe ich den Notruf an.',
  'The clinic may tell my doctor and others who treat me how my exercise and my joints are going. I can ask who was told what.':
    'Die Praxis darf meinem Arzt, meiner Ärztin und anderen, die mich behandeln, sagen, wie es mit Übungen und Gelenken geht. Ich kann fragen, wem was gesagt wurde.',
  'The clinic may hand on a copy of my record as a file, to me or to somebody I name.':
    'Die Praxis darf eine Kopie meiner Akte als Datei weitergeben, an mich oder an jemanden, den ich nenne.',
};
