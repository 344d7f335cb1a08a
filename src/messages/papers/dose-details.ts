/** What else was signed with a dose, for paper and the page that is printed: no other page carries these words. */
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

/** What else was signed with a dose, a sentence each, for whoever reads it away from the phone's own counting. */
export const doseDetails = (dose: Dose, speech: DoseSpeech): readonly string[] => [
  ...(dose.method === 'occlusion'
    ? cuffDetails(dose, speech)
    : [
        dose.reserve > 0
          ? speech.say('handout.do-reserve', { count: dose.reserve })
          : speech.say('handout.do-last'),
      ]),
  speech.say('handout.do-tempo', { seconds: dose.secondsPerRepetition }),
];
