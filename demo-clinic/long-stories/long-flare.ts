/** A flare of twelve days: over a week somebody has to look. */
import { loads } from '../home.ts';
import {
  everyFiveWeeks,
  type LongStory,
  quietMorning,
  quietSession,
  startingDose,
  within,
} from './long-story.ts';

const inFlare = (day: number): boolean => within(day, 120, 131);

export const longFlare: LongStory = {
  id: 'long-flare',
  who: 'Organist, 71, knee osteoarthritis',
  shows:
    'One cut in a flare of twelve days, and the easier session all along; on the eighth day somebody is asked to look.',
  joint: 'left-knee',
  inflammatory: false,
  stiffness: 20,
  ownedLoadsKg: loads(2, 8, 0.5),
  dose: startingDose('knee-extension-seated', 'left', 4, 12),
  weekdays: [0, 2, 4],
  setsBaseline: everyFiveWeeks(3),
  morning: (day) =>
    inFlare(day) ? { pain: 6, flare: true, stiffness: 45, swelling: 'slight' } : quietMorning(3, day),
  session: (day) => (inFlare(day) ? { before: 5, during: 6, after: 6 } : quietSession(3, day)),
  expected: [
    { day: 116, decision: 'progress', why: 'Quiet until here.' },
    { day: 120, decision: 'ease-back', why: 'A flare begins.' },
    { day: 126, decision: 'ease-back', why: 'Seventh day: still what flares do.' },
    {
      day: 127,
      decision: 'ease-back',
      why: 'Eighth day: longer than three of four flares. Keep moving, and somebody rings.',
    },
    { day: 131, decision: 'ease-back', why: 'Twelfth day, still the easier session.' },
    { day: 132, decision: 'hold', why: 'Over this morning; nothing was done since to judge the joint by.' },
    { day: 150, decision: 'progress', why: 'Two quiet weeks of sessions.' },
    { day: 364, decision: 'progress', why: 'Quiet for the rest of the year.' },
  ],
  disagreements: [
    {
      day: 132,
      expected: 'hold',
      engine: 'ease-back',
      why: 'The engine still judges the last session, done in the flare, by the mornings of the flare: the easier session once more. The dose is not cut a second time, so a physiotherapist would differ in the word and in one session.',
    },
  ],
  endsAt: 'above',
};
