/** The doses in force with who signed them, for every paper that tells a colleague what is done now. */
import { isRest } from '#core/decision/left-of-today.ts';
import { sentence } from '#core/episode/documents/document-words.ts';
import type { LetterSpeech } from '#messages/papers/colleague-words.ts';
import { doseText } from '#messages/papers/paper-speech.ts';
import type { HandoverPaper } from '../handover/handover-paper.ts';

/** Of what rests no dose is said; of what is eased the easier session alone. */
export const doseLines = (
  { inForce }: Pick<HandoverPaper, 'inForce'>,
  { say: sayIn, exercise: nameOf, dose: doseSpeech }: LetterSpeech,
): readonly string[] =>
  inForce.map(({ dose, easierSession, signedName, today }) => {
    const exercise = nameOf(dose.exerciseId);
    const signed = sayIn('signed-by', { name: signedName ?? '' });
    if (isRest(today)) return `${sayIn('dose-rests', { exercise })} ${signed}`;
    return today === 'bad-day'
      ? `${sayIn('dose-easier', { exercise })} ${sentence(doseText(easierSession, doseSpeech))} ${signed}`
      : `${exercise}: ${sentence(doseText(dose, doseSpeech))} ${signed}`;
  });
