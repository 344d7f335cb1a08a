/** Usual pain of 5 and a clinician who widened band and ceiling for it. */
import { loads } from '../home.ts';
import { type LongStory, score, startingDose, within, wobble } from './long-story.ts';

const isBad = (day: number): boolean => within(day, 200, 203);

export const highUsualPain: LongStory = {
  id: 'high-usual-pain',
  who: 'Weaver, 55, rheumatoid arthritis of the knees, quiet disease',
  shows:
    'With an acceptable pain limit of 7 and a band of one point a person at 5 can go on; a bad week still eases.',
  joint: 'left-knee',
  inflammatory: true,
  stiffness: 40,
  ownedLoadsKg: loads(1, 6, 0.25),
  dose: startingDose('knee-extension-seated', 'left', 2.5, 8),
  weekdays: [0, 3],
  setsBaseline: Array.from({ length: 11 }, (_, place) => ({
    day: 35 * place,
    usualPain: 5,
    top: 6,
    ceiling: 7,
  })),
  morning: (day) =>
    isBad(day)
      ? { pain: 8, flare: true, stiffness: 120, swelling: 'slight' }
      : { pain: score(5 + wobble(day)) },
  session: (day) =>
    isBad(day)
      ? { before: 7, during: 8, after: 8 }
      : { before: 5, during: score(5 + Math.max(0, wobble(day))), after: 5 },
  expected: [
    { day: 39, decision: 'progress', why: 'At her usual 5 to 6 all along.' },
    { day: 150, decision: 'progress', why: 'The same.' },
    { day: 200, decision: 'ease-back', why: '8 on waking, in a flare.' },
    { day: 202, decision: 'ease-back', why: 'Third day of an inflammatory flare; rest, and a call.' },
    { day: 230, decision: 'progress', why: 'Three weeks back at usual.' },
    { day: 364, decision: 'progress', why: 'At usual.' },
  ],
  disagreements: [
    {
      day: 200,
      expected: 'ease-back',
      engine: 'pause',
      why: '8 on waking and three over usual pauses by itself (P1x). A physiotherapist would ring the same day too, and might only ease; the engine is the more cautious.',
    },
    {
      day: 202,
      expected: 'ease-back',
      engine: 'pause',
      why: 'The same pause stands until a clinician reopens it, which this one does on day 207.',
    },
  ],
  resumes: [207],
  endsAt: 'above',
};
