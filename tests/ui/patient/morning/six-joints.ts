/** A morning of six joints, three of them worse, for tests of how it is asked. */
import type { Joint } from '#core/exercises/joints.ts';
import type { AsYesterday } from '#core/record/as-yesterday.ts';
import { beginMorning, type MorningEvent, morningReducer } from '#ui/patient/morning/morning.ts';
import type { MorningDraft } from '#ui/patient/morning/morning-draft.ts';

export const six: readonly Joint[] = [
  'left-hand',
  'right-hand',
  'left-wrist',
  'right-wrist',
  'left-knee',
  'right-knee',
];
export const quiet: AsYesterday = {
  joints: six.map((joint) => ({ joint, stiffnessMinutes: 15, underPain: 4 })),
  noOtherJoint: true,
};

export const begin = (over: Partial<MorningDraft> = {}): MorningDraft => ({
  ...beginMorning({
    entryId: 'morning-1',
    ownerId: 'p',
    day: '2026-03-09',
    zone: 'Europe/Dublin',
    asksStiffness: true,
    asksSwelling: true,
    asksOtherJoint: true,
    asYesterday: quiet,
    joints: six,
  }),
  ...over,
});

export const play = (draft: MorningDraft, ...events: readonly MorningEvent[]) =>
  events.reduce(morningReducer, draft);
export const scored = (...pains: readonly number[]): readonly MorningEvent[] =>
  pains.flatMap((pain, place) => [
    { type: 'answer', joint: six[place]!, answer: { pain } },
    { type: 'next' },
  ]);
export const noSigns: MorningEvent = { type: 'flags', flags: [], now: 9 };
export const usual: MorningEvent = { type: 'usual' };
export const usualJoints: MorningEvent = { type: 'usual-joints' };

export const threeFlare = (over: Partial<MorningDraft> = {}) =>
  play(begin(over), ...scored(6, 5, 7, 2, 2, 2));
