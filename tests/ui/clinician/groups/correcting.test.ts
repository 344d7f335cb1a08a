/** A saved session of a group hour that is put right after the plan has changed. */
import { describe, expect, it } from 'vitest';
import type { SessionEntry } from '#core/record/entries.ts';
import type { GroupPerson } from '#ui/clinician/answers.ts';
import { personNow, typedFrom } from '#ui/clinician/groups/correcting.ts';
import { exercisesNow, isShort, loadName } from '#ui/clinician/groups/group-answers.ts';
import { entryOf } from '#ui/clinician/groups/group-entry.ts';
import { withoutSet } from '#ui/clinician/groups/set-presses.ts';
import { after, before, dose, exercise, person, today } from './person-of-hour.ts';

const pressed = {
  ...before,
  ...after,
  'as:line1': 'planned',
  ...Object.fromEntries(
    [1, 2, 3].flatMap((set) => [
      [`set:line1:${set}`, '20'],
      [`effort:line1:${set}`, '2'],
    ]),
  ),
};
const first = entryOf(person(), pressed, { now: 5000 });
const { prescriptionId, itemId, joints, badDay, signedName, cautions } = exercise;
const done = { prescriptionId, itemId, joints, dose, badDay, signedName, cautions };
const saved = (entry: SessionEntry) => ({
  sessionId: 's1',
  entry,
  arrivedAt: 5000,
  by: 'Ada Verrin',
  correctedBy: [],
  exercises: [done],
  next: [],
});

const eased = { ...dose, sets: 2, loadKg: 3, repetitions: { low: 25, high: 30 } };
/** Eased back meanwhile: another version of the prescription, with fewer sets and less weight. */
const easedBack = {
  ...today,
  exercises: [{ ...exercise, prescriptionId: 'rx2', dose: eased, badDay: eased }],
};
const correcting = (over: Partial<GroupPerson> = {}, entry = first) => {
  const typed = { hour: 'h', ...typedFrom(entry, 'second') };
  return { typed, at: personNow(person({ today: easedBack, session: saved(entry), ...over }), typed) };
};
const again = { ...first, entryId: 'second', amends: 'group-1', sentAt: 9000 };

describe('a correction after the dose was eased back', () => {
  it('is of the work that was done: each set with the prescription, load and count it was saved with', () => {
    const { typed, at } = correcting();
    expect(entryOf(at, typed, { now: 9000 })).toEqual(again);
  });

  it('is the same without the session at hand, as when it is sent again from a draft', () => {
    const { typed } = correcting();
    expect(entryOf(person({ today: easedBack }), typed, { now: 9000 }).sets).toEqual(first.sets);
  });

  it('changes only what was pressed', () => {
    const { typed, at } = correcting();
    const { sets } = entryOf(at, { ...typed, 'set:line1:2': '12' }, { now: 9000 });
    expect(sets).toEqual([
      first.sets[0],
      { ...first.sets[1], repetitions: 12, stopReason: 'unknown' },
      first.sets[2],
    ]);
  });

  it('judges no set by the dose of now', () => {
    const { typed, at } = correcting();
    const [now] = exercisesNow(at.today, typed);
    expect(now).toMatchObject({ state: 'done', dose: { sets: 3, loadKg: 4 } });
    expect(now!.sets.filter((set) => isShort(now!.dose, set))).toEqual([]);
  });

  it('keeps weights that differ between sets, and one that is not known, until a weight is pressed', () => {
    const sets = first.sets.map((set) => ({ ...set, loadKg: [4, 5, null][set.set - 1]! }));
    const { typed, at } = correcting({}, { ...first, sets });
    const loads = (over: object) =>
      entryOf(at, { ...typed, ...over }, { now: 9000 }).sets.map(({ loadKg }) => loadKg);
    expect(loads({})).toEqual([4, 5, null]);
    expect(loads({ [loadName('line1')]: '6' })).toEqual([6, 6, 6]);
  });

  it('leaves out a set that was taken back, and gives one that is added the prescription of the others', () => {
    const two = { ...first, sets: first.sets.slice(0, 2) };
    const { typed, at } = correcting({}, two);
    expect(entryOf(at, withoutSet(typed, 'line1', 1), { now: 9000 }).sets).toEqual([first.sets[1]]);
    const third = { 'set:line1:3': '20', 'effort:line1:3': '2' };
    expect(entryOf(at, { ...typed, ...third }, { now: 9000 }).sets).toEqual(first.sets);
  });
});

describe('a correction after the exercise has ended', () => {
  it('keeps its sets and the answers about its joint', () => {
    const { typed, at } = correcting({ today: { ...today, joints: [], exercises: [] } });
    expect(entryOf(at, typed, { now: 9000 })).toEqual(again);
    expect(exercisesNow(at.today, typed)).toMatchObject([{ exercise: { cautions }, state: 'done' }]);
  });
});

it('a correction on a later day is of the day of the work, in the zone it was entered in', () => {
  const later = { ...today, day: '2026-03-05', zone: 'Europe/Berlin' };
  const { typed, at } = correcting({ today: later });
  expect(entryOf(at, typed, { now: 9000 })).toEqual(again);
});
