/** What is done now, and what bounds it. */
import { isRest } from '#core/decision/left-of-today.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { doseInHand, doseTitle } from '#messages/doses.ts';
import type { LetterSpeech } from '#messages/papers/colleague-words.ts';
import type { LetterExercise, LetterPaper } from './letter-paper.ts';

/** Without its rest and tempo, which stand in the record behind. */
const inShort = (dose: Dose, { dose: speech, say }: LetterSpeech): string =>
  [
    doseTitle(dose, speech),
    ...doseInHand(dose, speech),
    say('times-a-week', { count: dose.sessionsPerWeek }),
  ].join(', ');

/** Who is there while a cuff is on; of what rests nothing is said. */
const presenceIn = ({ now: { dose }, today }: LetterExercise, { say }: LetterSpeech): readonly string[] =>
  dose.method !== 'occlusion' || isRest(today)
    ? []
    : [say(dose.supervised ? 'with-clinician' : 'at-home-alone')];

const exerciseLine = (one: LetterExercise, speech: LetterSpeech): string => {
  const { say, day } = speech;
  const { now, today } = one;
  const exercise = speech.exercise(now.dose.exerciseId);
  const said = isRest(today)
    ? say('dose-rests', { exercise })
    : today === 'bad-day'
      ? say('dose-easier', { exercise })
      : say(now.isWithinSigned ? 'dose-within' : 'dose-now', {
          exercise,
          on: day(now.signedOn),
          dose: inShort(now.dose, speech),
        });
  return [said, ...presenceIn(one, speech)].join(' ');
};

export const doseIn = (letter: LetterPaper, speech: LetterSpeech): readonly string[] => {
  const { say, joint: inWords } = speech;
  return [
    ...letter.exercises.map((one) => exerciseLine(one, speech)),
    ...(letter.exercises.length === 0 ? [say('no-dose')] : []),
    ...letter.painLimits.map(({ joint, limit }) =>
      limit === null
        ? say('no-pain-limit', { where: inWords(joint) })
        : say('pain-limit', { where: inWords(joint), limit }),
    ),
    ...(letter.limits.length === 0 ? [say('no-limits')] : letter.limits.map(speech.limit)),
  ];
};
