/**
 * Gathering the facts anew sees what was known then and nothing that came later. A history is lived through entry by
 * entry, and what the engine is told at each is kept aside; looked back on from the end it has to be the same.
 */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { MachineInput } from '#core/clinic/machine.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { evaluate } from '#core/decision/scope.ts';
import type { Access } from '#data/access.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { machinesOf, writeMachine } from '#data/clinic/machines.ts';
import type { Store } from '#data/database/store.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { engineValues, isAsked } from '#data/decision/evaluate.ts';
import { recordOf } from '#data/patients/record.ts';
import { gatherAnew } from '#data/replay/gather-anew.ts';
import { knownRecords } from '#data/replay/known-record.ts';
import { inThePast } from '#data/replay/past/in-the-past.ts';
import { seeded } from '#simulation/raises/seeded.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { type PrescriptionItem, sendMorning, sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs } from '#tests/support/working-patient.ts';

let store: Store;
let patientId: string;
let item: PrescriptionItem;
/** What the engine was told, by instant. */
const told = new Map<number, Readonly<Record<string, Facts>>>();

const at = (day: number, hour = 9): Access =>
  accessOf(store, 'a', 'clinician-a', start + day * dayMs + (hour - 9) * 3_600_000, 'Clinician A');

beforeEach(async () => {
  store = freshStore();
  told.clear();
  const setting = await twoClinics(store);
  patientId = setting.patientId;
  item = await signedExercise(setting.clinician, patientId);
});
afterEach(() => store.close());

const keep = async (access: Access): Promise<void> => {
  const record = (await recordOf(access, patientId))!;
  const moment = { instant: access.now, day: access.day };
  const { joints } = evaluate(record, moment, await engineValues(access));
  const asked = joints.filter((one) => isAsked(record, one));
  told.set(access.now, Object.fromEntries(asked.map(({ joint, facts }) => [joint, facts])));
};

const session = async (access: Access, painAfter: number, over: object = {}): Promise<void> => {
  const stored = await sendSession(access, patientId, item, painAfter, over);
  expect(stored.kind).toBe('stored');
  await keep(access);
};

const morning = async (access: Access, pain: number | null): Promise<void> => {
  await sendMorning(access, patientId, pain);
  await keep(access);
};

const baseline = (access: Access, usualPain: number, acceptablePainLimit = 5) =>
  asClinician(access).clinician.review.setBaseline({
    patientId,
    baseline: {
      joint: 'right-knee',
      usualPain,
      usualPainTop: usualPain,
      acceptablePainLimit,
      usualStiffnessMinutes: 10,
      usualSwelling: 'none',
      usualEffusion: 'zero',
      reason: 'First look',
    },
  });

/** As looked back on from the end, by instant. */
const lookedBack = async (from: string) => {
  const looks = await gatherAnew(at(400), patientId, from);
  return new Map(
    looks.map(({ look, joints }) => [
      look.instant,
      Object.fromEntries(joints.map(({ joint, facts }) => [joint, facts])),
    ]),
  );
};

const expectSame = async (from = '2026-01-01'): Promise<void> => {
  const back = await lookedBack(from);
  for (const [instant, facts] of told)
    expect(back.get(instant), new Date(instant).toISOString()).toEqual(facts);
  expect(told.size).toBeGreaterThan(1);
};

describe('an evaluation at an instant sees nothing that arrived later', () => {
  it('neither an amended answer nor the entry it took the place of once it is amended', async () => {
    await session(at(0, 18), 2, { entryId: 'first' });
    await morning(at(1), 1);
    const began = at(0, 17).now;
    const times = { beganAt: began, endedAt: began + 600_000, day: at(0).day };
    await session(at(1, 12), 8, { entryId: 'second', amends: 'first', ...times });
    const back = await lookedBack('2026-01-01');
    const seen = [...back.values()].map((joints) => joints['right-knee']?.painAfter);
    expect(seen).toEqual([2, 2, 8]);
    await expectSame();
  });

  it('nor a session that arrived days after it was done, also where it is only counted', async () => {
    await session(at(0, 18), 2);
    await morning(at(1), 1);
    await morning(at(4), 2);
    await session(at(5), 6, {
      beganAt: start + 2 * dayMs,
      endedAt: start + 2 * dayMs + 600_000,
      day: at(2).day,
    });
    await morning(at(6), 1);
    await expectSame();
  });

  it('nor a baseline set, or settings changed, or what is put right afterwards', async () => {
    await session(at(0, 18), 4);
    await morning(at(1), 3);
    await baseline(at(1, 12), 3, 7);
    await session(at(2, 18), 6);
    await saveSettings(at(3), { 'severe-pain': 7, 'morning-to-hour': 11 }, 'Local rule');
    await morning(at(3, 10), 3);
    await baseline(at(4), 5, 5);
    await session(at(4, 18), 6);
    await expectSame();
    const answers = (await decisionsOf(at(5), patientId, '2026-01-01')).map(({ decision }) => decision);
    expect(new Set(answers).size).toBeGreaterThan(1);
  });

  it('nor a machine written, or corrected, afterwards', async () => {
    const row: MachineInput = {
      name: 'Leg press',
      kind: 'leg-press',
      loading: 'stack',
      place: 'Gym',
      firstKg: 10,
      stepKg: 5,
      lastKg: 30,
      hasHalfStep: false,
    };
    const later = at(1).now;
    await writeMachine(at(1), { row, isRetired: false, replaces: null }, 'press');
    const [replaces] = await machinesOf(at(2));
    await writeMachine(at(3), { row: { ...row, lastKg: 50 }, isRetired: false, replaces: replaces! });
    const moments = [later - 1, later, at(2).now, at(3).now].map((instant) => ({ instant, day: at(0).day }));
    const known = await knownRecords(at(4), patientId, '2026-01-01', moments);
    const seen: (readonly number[])[] = [];
    for (const moment of moments) seen.push((await known.at(moment))!.machines!.map(({ lastKg }) => lastKg));
    expect(seen).toEqual([[], [30], [30], [50]]);
  });

  it('nor what lay before the days the engine read: a session or a baseline from long ago', async () => {
    await baseline(at(0, 8), 2);
    await session(at(0, 18), 6);
    await morning(at(1), 2);
    await session(at(135, 18), 2);
    await morning(at(136), 3);
    await morning(at(270), 3);
    await expectSame();
    // Of a session that is no longer read the engine says nothing.
    expect(told.get(at(270).now)!['right-knee']?.painAfter).toBeNull();
  });

  it('and the file as it was, asked by the functions of now, tells the engine the same', async () => {
    await session(at(0, 18), 4, { entryId: 'first' });
    await morning(at(1), 3);
    await baseline(at(1, 12), 3, 7);
    await session(at(2, 18), 6);
    await saveSettings(at(3), { 'severe-pain': 7 }, 'Local rule');
    await morning(at(3, 10), 3);
    const then = new Map(told);
    told.clear();
    for (const [instant, facts] of then) {
      await inThePast(at(400), instant, keep);
      expect(told.get(instant), new Date(instant).toISOString()).toEqual(facts);
    }
    expect(then.size).toBe(4);
  });

  it('over months with amendments and late answers drawn at random', async () => {
    const random = seeded(5);
    const pain = () => random.below(8);
    let last: { entryId: string; beganAt: number; day: string } | null = null;
    for (let day = 0; day < 90; day += 1 + random.below(4)) {
      if (day % 50 < 3) await baseline(at(day, 8), random.below(4));
      await morning(at(day), random.chance(0.2) ? null : pain());
      const done = random.chance(0.2) && day > 1 ? at(day - 1, 18) : at(day, 18);
      const entry = { entryId: `s${day}`, beganAt: done.now - 1_800_000, day: done.day };
      await session(at(day, 19), pain(), { ...entry, endedAt: done.now - 600_000 });
      if (last && random.chance(0.15))
        await session(at(day, 20), pain(), {
          ...last,
          ...{ entryId: `a${day}`, amends: last.entryId, endedAt: last.beganAt + 1_200_000 },
        });
      else last = entry;
    }
    await expectSame();
  }, 60_000);
});
