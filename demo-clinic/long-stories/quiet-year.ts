/** A year in which the knee says nothing new. */
import { loads } from '../home.ts';
import { everyFiveWeeks, type LongStory, quietMorning, quietSession, startingDose } from './long-story.ts';

export const quietYear: LongStory = {
  id: 'quiet-year',
  who: 'Retired bus driver, 66, knee osteoarthritis',
  shows: 'A step a week while the joint stays quiet, as far as half of the maximum.',
  joint: 'right-knee',
  inflammatory: false,
  stiffness: 15,
  ownedLoadsKg: loads(2, 8, 0.3),
  dose: startingDose('knee-extension-seated', 'right', 3.5, 12),
  weekdays: [0, 2, 4],
  setsBaseline: everyFiveWeeks(3),
  morning: (day) => quietMorning(3, day),
  session: (day) => quietSession(3, day),
  expected: [
    { day: 10, decision: 'progress', why: 'Quiet from the start.' },
    { day: 101, decision: 'progress', why: 'Still quiet.' },
    { day: 199, decision: 'progress', why: 'Still quiet.' },
    { day: 364, decision: 'progress', why: 'A whole year quiet.' },
  ],
  disagreements: [],
  endsAt: 'above',
};
