/** Somebody who does more than asked, takes tablets for a week, and gets an injection. */
import { loads } from '../home.ts';
import {
  everyFiveWeeks,
  type LongStory,
  quietMorning,
  quietSession,
  startingDose,
  within,
} from './long-story.ts';

export const eager: LongStory = {
  id: 'eager',
  who: 'Climbing instructor, 28, elbow osteoarthritis after a fracture',
  shows:
    'More than asked, extra tablets, a joint that gave way, an injection: each holds for its own reason.',
  joint: 'right-elbow',
  inflammatory: false,
  stiffness: 0,
  ownedLoadsKg: loads(2, 12, 0.5),
  dose: startingDose('curl-seated', 'right', 5, 16),
  weekdays: [0, 2, 4],
  setsBaseline: everyFiveWeeks(1),
  events: [{ day: 250, kind: 'joint-injection' }],
  morning: (day) => ({ ...quietMorning(1, day), relief: within(day, 140, 147) }),
  session: (day) => ({
    ...quietSession(1, day),
    extra: day === 58 || day === 60,
    gaveWay: day === 91,
    relief: within(day, 140, 146),
  }),
  expected: [
    { day: 40, decision: 'progress', why: 'Quiet and as asked.' },
    { day: 59, decision: 'hold', why: 'Extra sets on Wednesday: talk before adding.' },
    { day: 64, decision: 'progress', why: 'As asked again on Monday.' },
    { day: 92, decision: 'hold', why: 'The elbow gave way.' },
    { day: 143, decision: 'hold', why: 'Extra tablets blunt the score.' },
    { day: 155, decision: 'progress', why: 'Without them for a week.' },
    { day: 257, decision: 'hold', why: 'A week after an injection.' },
    { day: 272, decision: 'progress', why: 'Three weeks after it, quiet.' },
  ],
  disagreements: [],
  endsAt: 'above',
};
