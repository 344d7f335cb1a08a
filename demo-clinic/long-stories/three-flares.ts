/** Three flares of five or six days, each overnight, with quiet months between. */
import { loads } from '../home.ts';
import {
  everyFiveWeeks,
  type LongStory,
  quietMorning,
  quietSession,
  startingDose,
  within,
} from './long-story.ts';

/** First and last day of each. */
const flares = [
  [71, 75],
  [162, 167],
  [302, 306],
] as const;
const inFlare = (day: number): boolean => flares.some(([from, to]) => within(day, from, to));

export const threeFlares: LongStory = {
  id: 'three-flares',
  who: 'Gardener, 59, hip osteoarthritis',
  shows: 'Each flare eases once; afterwards the dose comes back; the year ends above its start.',
  joint: 'left-hip',
  inflammatory: false,
  stiffness: 20,
  ownedLoadsKg: loads(1, 6, 0.25),
  dose: startingDose('side-lying-hip-abduction', 'left', 2.5, 8),
  weekdays: [0, 2, 4],
  setsBaseline: everyFiveWeeks(2),
  morning: (day) =>
    inFlare(day) ? { pain: 6, flare: true, stiffness: 40, swelling: 'slight' } : quietMorning(2, day),
  session: (day) => (inFlare(day) ? { before: 5, during: 5, after: 5 } : quietSession(2, day)),
  expected: [
    { day: 66, decision: 'progress', why: 'Quiet for two months.' },
    { day: 71, decision: 'ease-back', why: 'First day of a flare.' },
    { day: 75, decision: 'ease-back', why: 'Fifth day of it.' },
    { day: 78, decision: 'hold', why: 'Over, and the week still high in the mean.' },
    { day: 87, decision: 'progress', why: 'Two quiet weeks: on the way back.' },
    { day: 162, decision: 'ease-back', why: 'Second flare.' },
    { day: 185, decision: 'progress', why: 'Quiet again for over two weeks.' },
    { day: 302, decision: 'ease-back', why: 'Third flare.' },
    { day: 364, decision: 'progress', why: 'Quiet since November.' },
  ],
  disagreements: [
    {
      day: 78,
      expected: 'hold',
      engine: 'ease-back',
      why: 'The flare ended three days before, but its mornings still fill the mean of the week (P7). The dose is the one a physiotherapist would leave: no second cut is made in the week after a flare with a cut in it.',
    },
  ],
  endsAt: 'above',
};
