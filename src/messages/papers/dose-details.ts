/** What else was signed with a dose, for paper and the page that is printed: no other page carries these words. */
import { heldSeconds } from '#core/decision/dose/volume.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { DoseSpeech } from '../doses.ts';

const cuffDetails = (
  dose: Extract<Dose, { method: 'occlusion' }>,
  { say }: DoseSpeech,
): readonly string[] => [
  say('handout.do-cuff-minutes', { minutes: Math.floor(dose.capSeconds / 60) }),
  ...(dose.cuff.kind === 'pneumatic'
    ? [
        say(`handout.do-cuff-${dose.cuff.position}`, { width: dose.cuff.widthCm }),
        say(dose.inflation === 'continuous' ? 'handout.do-inflated' : 'handout.do-deflated'),
      ]
    : []),
  ...(dose.pulseShown ? [say('handout.do-no-pulse')] : []),
];

const tempo = (dose: Dose, { say }: DoseSpeech): string => {
  const seconds = heldSeconds(dose);
  return seconds === null
    ? say('handout.do-tempo', { seconds: dose.secondsPerRepetition })
    : say('dose.hold', { seconds, between: dose.secondsPerRepetition - seconds });
};

/** What else was signed with a dose, a sentence each, for whoever reads it away from the phone's own counting. */
export const doseDetails = (dose: Dose, speech: DoseSpeech): readonly string[] => [
  ...(dose.method === 'occlusion'
    ? cuffDetails(dose, speech)
    : [
        dose.reserve > 0
          ? speech.say(heldSeconds(dose) === null ? 'handout.do-reserve' : 'dose.hold-reserve', {
              count: dose.reserve,
            })
          : speech.say(heldSeconds(dose) === null ? 'handout.do-last' : 'dose.hold-last'),
      ]),
  tempo(dose, speech),
];
