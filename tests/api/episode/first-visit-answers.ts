/** What a first visit sends: everything answered, nothing found. */
import { screeningSheetVersion } from '#core/screening/items.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';

export const asked = (over: Readonly<Record<string, string>> = {}) => ({
  sheetVersion: screeningSheetVersion,
  answers: minimumSet('low-load', 64).map(({ id }) => ({ item: id, answer: over[id] ?? 'no' })),
});
export const profile = {
  diagnosis: 'Knee osteoarthritis',
  inflammatoryArthritis: false,
  followedJoints: ['right-knee'],
  ownedLoadsKg: [1, 2, 3, 4],
  formulaSex: null,
};
export const usual = {
  joint: 'right-knee',
  usualPain: 3,
  acceptablePainLimit: 5,
  usualStiffnessMinutes: 15,
  usualSwelling: 'slight',
};
export const visit = {
  profile,
  screening: asked(),
  joints: [usual],
  pressure: { systolicMmhg: 128, diastolicMmhg: 78 },
  test: { exerciseId: 'knee-extension-seated', side: 'right', loadKg: 8, repetitions: 10 },
  goal: 'Get up from the floor',
};
export const request = { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' };
