/** What a first visit sends: everything answered, nothing found. */
import { householdEquipment } from '#core/exercises/equipment.ts';
import { screeningSheetVersion } from '#core/screening/items.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';

export const asked = (over: Readonly<Record<string, string>> = {}) => ({
  sheetVersion: screeningSheetVersion,
  answers: minimumSet('low-load', 64).map(({ id }) => ({ item: id, answer: over[id] ?? 'no' })),
});
export const reason = {
  diagnosis: 'Knee osteoarthritis',
  inflammatoryArthritis: false,
  followedJoints: ['right-knee'],
};
export const home = { ownedLoadsKg: [1, 2, 3, 4], ownedEquipment: [...householdEquipment, 'ankle weight'] };
export const usual = {
  joint: 'right-knee',
  usualPain: 3,
  acceptablePainLimit: 5,
  usualStiffnessMinutes: 15,
  usualSwelling: 'slight',
};
export const visit = {
  reason,
  home,
  screening: asked(),
  joints: [usual],
  pressure: { systolicMmhg: 128, diastolicMmhg: 78 },
  test: { exerciseId: 'knee-extension-seated', side: 'right', loadKg: 8, repetitions: 10 },
  goal: 'Get up from the floor',
};
export const request = { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' };
