/** Rheumatoid arthritis: a flare of three weeks, a new medicine in it, and two quiet halves of a year. */
import { loads } from '../home.ts';
import {
  everyFiveWeeks,
  type LongStory,
  quietMorning,
  quietSession,
  startingDose,
  within,
} from './long-story.ts';

const inFlare = (day: number): boolean => within(day, 190, 210);

export const changedTreatment: LongStory = {
  id: 'changed-treatment',
  who: 'Translator, 41, rheumatoid arthritis of the wrists',
  shows: 'An inflammatory flare lasts; the new medicine blunts the score, so nothing goes up for two weeks.',
  joint: 'right-wrist',
  inflammatory: true,
  stiffness: 30,
  ownedLoadsKg: loads(0.5, 3, 0.25),
  dose: startingDose('wrist-bend-up', 'right', 1, 3.5),
  weekdays: [1, 4],
  setsBaseline: everyFiveWeeks(2),
  events: [{ day: 206, kind: 'medicine-change' }],
  morning: (day) =>
    inFlare(day)
      ? { pain: day < 206 ? 6 : 4, flare: true, stiffness: 100, swelling: 'slight' }
      : quietMorning(2, day),
  session: (day) => (inFlare(day) ? { before: 4, during: 5, after: 5 } : quietSession(2, day)),
  expected: [
    { day: 100, decision: 'progress', why: 'Quiet half a year.' },
    { day: 190, decision: 'ease-back', why: 'A flare begins.' },
    { day: 193, decision: 'ease-back', why: 'Fourth day; the clinic is told.' },
    { day: 205, decision: 'ease-back', why: 'Third week of it.' },
    { day: 219, decision: 'hold', why: 'Quiet, but the new medicine is thirteen days old.' },
    { day: 230, decision: 'progress', why: 'Quiet on the new medicine for over three weeks.' },
    { day: 364, decision: 'progress', why: 'Quiet.' },
  ],
  disagreements: [],
  endsAt: 'above',
};
