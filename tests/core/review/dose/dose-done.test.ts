/** What a session did, against the first signed dose: hand-worked, by repetitions × sets × load × level. */
import { describe, expect, it } from 'vitest';
import type { VariationDose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion, SessionRecord, SetRecord } from '#core/record/record.ts';
import { doseDone } from '#core/review/dose/dose-done.ts';
import { dose, session, version } from '../builders.ts';

/** 2 × 15 with 4 kg = 120 kg of repetitions. */
const first = version(1);

const set = (number: number, repetitions: number | null, loadKg: number | null): SetRecord => ({
  itemId: 'line',
  prescriptionId: 'version-1',
  set: number,
  repetitions,
  loadKg,
  reserve: 2,
  stopReason: 'none',
});

const doneBy = (
  sets: readonly SetRecord[],
  more: Partial<SessionRecord> = {},
  versions: readonly PrescriptionVersion[] = [first],
) =>
  doseDone(
    { ...session('2026-03-02'), ...more, sets },
    'line',
    new Map(versions.map((one) => [one.id, one])),
    first.dose,
  );

const shareOf = (...sets: readonly SetRecord[]) => doneBy(sets)?.share;

describe('the dose a session did', () => {
  it('is the first signed dose where its floor was reached, and no more where the top of the band was', () => {
    expect(doneBy([set(1, 15, 4), set(2, 15, 4)])).toMatchObject({ share: 1, isAsMeant: true });
    expect(doneBy([set(1, 25, 4), set(2, 25, 4)])).toMatchObject({ share: 1, isAsMeant: true });
  });

  it('falls with repetitions and sets left out: 14 and 15 of 15 and 15 are 29 of 30, one set is half', () => {
    expect(doneBy([set(1, 14, 4), set(2, 15, 4)])).toMatchObject({ isAsMeant: false });
    expect(shareOf(set(1, 14, 4), set(2, 15, 4))).toBeCloseTo(29 / 30, 12);
    expect(shareOf(set(1, 15, 4))).toBeCloseTo(0.5, 12);
    expect(shareOf(set(1, 0, 4), set(2, 0, 4))).toBe(0);
  });

  it('goes with the load that was used: 15 with 4 kg and 15 with 5 kg are 135 of 120', () => {
    expect(shareOf(set(1, 15, 4), set(2, 15, 5))).toBeCloseTo(135 / 120, 12);
    expect(doneBy([set(1, 15, 5), set(2, 15, 5)])).toMatchObject({ share: 1.25, isAsMeant: false });
  });

  it('counts a set sent twice once, and no set beyond those asked for', () => {
    expect(shareOf(set(1, 15, 4), set(1, 10, 4), set(2, 15, 4), set(3, 15, 4))).toBe(1);
  });

  it('is that of the signed easier session where that was done: 1 × 15 of 2 × 15', () => {
    const done = doneBy([set(1, 15, 4)], { kind: 'bad-day' });
    expect(done).toMatchObject({ share: 0.5, isEasier: true, isAsMeant: true, meant: first.badDay });
  });

  it('of a later version is told against the first: 2 × 18 with 5 kg is 180 of 120', () => {
    const later = version(2, { dose: { ...dose, loadKg: 5, repetitions: { low: 18, high: 25 } } });
    const sets = [set(1, 18, 5), set(2, 18, 5)].map((one) => ({ ...one, prescriptionId: 'version-2' }));
    expect(doneBy(sets, {}, [first, later])?.share).toBeCloseTo(1.5, 12);
  });

  it('is not known, and never less, where a count or a load was not given', () => {
    const unknown = { share: null, notKnown: 'work-not-given', isAsMeant: false };
    expect(doneBy([set(1, null, 4), set(2, 15, 4)])).toMatchObject(unknown);
    expect(doneBy([set(1, 15, null), set(2, 15, 4)])).toMatchObject(unknown);
  });

  it('is not known for a test, nor at versions that are not on record', () => {
    expect(doneBy([set(1, 15, 4)], { kind: 'test' })).toMatchObject({ share: null, notKnown: 'test' });
    const other = { ...set(2, 15, 4), prescriptionId: 'version-9' };
    for (const sets of [[other], [set(1, 15, 4), other]])
      expect(doneBy(sets)).toMatchObject({ share: null, notKnown: 'version-not-known', meant: null });
  });

  it('is none where the session held none of the exercise', () => {
    expect(doneBy([{ ...set(1, 15, 4), itemId: 'other' }])).toBeNull();
  });
});

describe('of a level', () => {
  const level = (effectiveLoadKg: number | null, addedKg = 0): VariationDose => ({
    method: 'variation',
    exerciseId: 'sit-to-stand',
    side: 'both',
    sets: 2,
    repetitions: { low: 10, high: 12 },
    reserve: 2,
    effectiveLoadKg,
    addedKg,
    restSeconds: 60,
    secondsPerRepetition: 4,
    sessionsPerWeek: 3,
  });
  const doneAt = (meant: VariationDose, loadKg: number | null, of: VariationDose = meant) => {
    const own = version(1, { dose: meant });
    const sets = [set(1, 10, loadKg), set(2, 10, loadKg)];
    return doseDone({ ...session('2026-03-02'), sets }, 'line', new Map([[own.id, own]]), of);
  };

  it('the load is that of the level and what is added: 40 and 5 kg are 45 of 40', () => {
    expect(doneAt(level(40, 5), 5, level(40))?.share).toBeCloseTo(45 / 40, 12);
    expect(doneAt(level(40), null)?.share).toBe(1);
  });

  it('with no figure the repetitions alone are told, and against another exercise nothing', () => {
    expect(doneAt(level(null), null)?.share).toBe(1);
    const harder = { ...level(null), exerciseId: 'split-squat' };
    expect(doneAt(harder, null, level(null))).toMatchObject({ share: null, notKnown: 'not-comparable' });
  });
});
