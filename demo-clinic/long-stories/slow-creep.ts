/** Pain that rises by a point each ten weeks, and a clinician who sets as baseline what the diary shows each time. */
import { loads } from '../home.ts';
import { type LongStory, quietMorning, quietSession, startingDose } from './long-story.ts';

const levelOf = (day: number): number => Math.min(6, 2 + Math.floor(day / 70));

export const slowCreep: LongStory = {
  id: 'slow-creep',
  who: 'Hairdresser, 48, shoulder osteoarthritis',
  shows:
    'A slow worsening that new usual values follow: once it is 2 points, the dose holds until somebody has looked.',
  joint: 'right-shoulder',
  inflammatory: false,
  stiffness: 5,
  ownedLoadsKg: loads(1, 5, 0.25),
  dose: startingDose('side-arm-raise-straight', 'right', 2, 6.5),
  weekdays: [0, 3],
  setsBaseline: Array.from({ length: 11 }, (_, place) => ({
    day: 35 * place,
    usualPain: levelOf(35 * place),
  })),
  morning: (day) => quietMorning(levelOf(day), day),
  session: (day) => quietSession(levelOf(day), day),
  expected: [
    { day: 60, decision: 'progress', why: 'Ten quiet weeks at 2.' },
    { day: 150, decision: 'hold', why: 'From 2 to 4 in five months: look before adding.' },
    {
      day: 250,
      decision: 'hold',
      why: 'At 5, three over where she began: this is not a quiet joint, and nobody has looked at the rise yet.',
    },
    { day: 340, decision: 'hold', why: 'At 6 by now.' },
  ],
  disagreements: [],
  endsAt: 'above',
};
