/** Somebody who forgets every third morning and now and then a session. */
import { loads } from '../home.ts';
import { everyFiveWeeks, type LongStory, quietMorning, quietSession, startingDose } from './long-story.ts';

export const forgetful: LongStory = {
  id: 'forgetful',
  who: 'Night nurse, 44, wrist osteoarthritis',
  shows:
    'Missing answers hold; what is answered whole may still go on; nothing is ever eased for silence alone.',
  joint: 'right-wrist',
  inflammatory: false,
  stiffness: 10,
  ownedLoadsKg: loads(0.5, 3, 0.25),
  dose: startingDose('wrist-bend-up', 'right', 1, 3.5),
  weekdays: [0, 2, 4],
  setsBaseline: everyFiveWeeks(2),
  morning: (day) => (day % 3 === 1 ? null : quietMorning(2, day)),
  session: (day) => {
    if (day % 28 === 16 || day % 28 === 18) return null;
    const quiet = quietSession(2, day);
    return day % 28 === 21
      ? { ...quiet, during: null }
      : day % 28 === 23
        ? { ...quiet, reserveOpen: true }
        : quiet;
  },
  expected: [
    { day: 3, decision: 'progress', why: 'Wednesday’s session and Thursday’s morning are whole.' },
    { day: 10, decision: 'hold', why: 'Wednesday’s session has no morning after it.' },
    { day: 24, decision: 'hold', why: 'Nobody said how near to failure the sets were.' },
    { day: 50, decision: 'hold', why: 'Pain during Monday’s session was not answered.' },
    { day: 110, decision: 'hold', why: 'Sessions left out within two weeks, or a morning missing.' },
    { day: 171, decision: 'progress', why: 'A whole answer after a whole session.' },
  ],
  disagreements: [],
  endsAt: 'above',
};
