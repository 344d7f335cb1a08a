/** An agreed break of three weeks, and one of eight days. */
import { loads } from '../home.ts';
import { everyFiveWeeks, type LongStory, quietMorning, quietSession, startingDose } from './long-story.ts';

export const holiday: LongStory = {
  id: 'holiday',
  who: 'Teacher, 62, elbow osteoarthritis',
  shows: 'After three weeks away the dose starts lower and comes back; eight days away change nothing.',
  joint: 'left-elbow',
  inflammatory: false,
  stiffness: 10,
  ownedLoadsKg: loads(1, 6, 0.25),
  dose: startingDose('curl-seated', 'left', 2.5, 8),
  weekdays: [0, 2, 4],
  setsBaseline: everyFiveWeeks(2),
  breaks: [
    [150, 171],
    [280, 287],
  ],
  morning: (day) => quietMorning(2, day),
  session: (day) => quietSession(2, day),
  expected: [
    { day: 148, decision: 'progress', why: 'Quiet before the journey.' },
    { day: 158, decision: 'progress', why: 'Nine days without a session: nothing to change yet.' },
    { day: 171, decision: 'ease-back', why: 'Three weeks without a session: begin again with less.' },
    { day: 176, decision: 'progress', why: 'A quiet session at less: half-way back.' },
    { day: 289, decision: 'progress', why: 'Eight days away, then a quiet session.' },
    { day: 364, decision: 'progress', why: 'Quiet.' },
  ],
  disagreements: [],
  endsAt: 'above',
};
