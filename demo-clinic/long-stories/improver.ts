/** A knee that gets much better under an old baseline. */
import { loads } from '../home.ts';
import { type LongStory, quietMorning, quietSession, startingDose, within } from './long-story.ts';

const levelOf = (day: number): number =>
  day < 21 ? 5 : day < 35 ? 4 : day < 49 ? 3 : within(day, 280, 287) ? 4 : 1;

export const improver: LongStory = {
  id: 'improver',
  who: 'Postal worker, 35, knee osteoarthritis after an injury',
  shows:
    'Usual pain follows his better mornings by itself, and no longer than a baseline may last; then 4 is a lot.',
  joint: 'right-knee',
  inflammatory: false,
  stiffness: 10,
  ownedLoadsKg: loads(3, 12, 0.5),
  dose: startingDose('knee-extension-seated', 'right', 6, 18),
  weekdays: [0, 2, 4],
  setsBaseline: [
    { day: 0, usualPain: 5, ceiling: 6 },
    ...[70, 105, 140, 175, 210, 245, 315, 350].map((day) => ({ day, usualPain: 1 })),
    { day: 273, usualPain: 1 },
  ],
  morning: (day) => quietMorning(levelOf(day), day),
  /** Work itself adds nothing to this knee. */
  session: (day) => ({ ...quietSession(levelOf(day), day), during: levelOf(day) }),
  expected: [
    { day: 10, decision: 'progress', why: 'At 5, which is usual for him, and steady.' },
    { day: 42, decision: 'progress', why: 'His mornings fell from 5 to 3, and usual pain with them.' },
    {
      day: 64,
      decision: 'hold',
      why: 'Nobody has set usual pain for nine weeks: it came down by itself, but a clinician has to look.',
    },
    { day: 80, decision: 'progress', why: 'Baseline set anew at 1; quiet.' },
    { day: 285, decision: 'ease-back', why: '4 the morning after, three over what is usual now.' },
    { day: 364, decision: 'progress', why: 'Quiet again for months.' },
  ],
  disagreements: [],
  endsAt: 'above',
};
