/** One moved number lists exactly the days that follow from the answers on record, and nothing else. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { daysIn } from '#core/decision/what-if/what-if.ts';
import type { Access } from '#data/access.ts';
import type { Store } from '#data/database/store.ts';
import { whatIfOf, whatIfOfClinic } from '#data/replay/what-if.ts';
import { progressOf, stopJob, whatIfOnThread } from '#data/replay/what-if-jobs.ts';
import { accessOf, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { sendMorning, sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs } from '#tests/support/working-patient.ts';

let store: Store;
let patientId: string;
let access: Access;

const at = (day: number, hour = 9): Access =>
  accessOf(store, 'a', 'clinician-a', start + day * dayMs + (hour - 9) * 3_600_000);

/** Pain after the session of every other day; a quiet morning after each. */
const painAfter = [2, 6, 7, 3, 8, 5, 6, 9, 2, 7];

beforeAll(async () => {
  store = freshStore();
  ({ patientId } = await twoClinics(store));
  const item = await signedExercise(at(0), patientId);
  for (const [place, pain] of painAfter.entries()) {
    await sendSession(at(2 * place, 18), patientId, item, pain);
    await sendMorning(at(2 * place + 1), patientId, 1);
  }
  access = at(2 * painAfter.length, 12);
}, 60_000);
afterAll(() => store.close());

/** By hand: the evening of the session and the morning after it speak of the same pain. */
const daysWith = (isMeant: (pain: number) => boolean): readonly string[] =>
  painAfter.flatMap((pain, place) => (isMeant(pain) ? [at(2 * place).day, at(2 * place + 1).day] : []));

const limitOf = (acceptablePainLimit: number) => ({
  weeks: 12,
  moved: { settings: {}, joints: { 'right-knee': { acceptablePainLimit } } },
});
const withSetting = (id: string, value: number) => ({
  weeks: 12,
  moved: { settings: { [id]: value }, joints: {} },
});

describe('what a moved number would have said', () => {
  it('an acceptable pain limit of 7 instead of 5: eased back at 6 and 7, it would have held, and nowhere else', async () => {
    const found = await whatIfOf(access, patientId, limitOf(7));
    expect(found.days.map(({ day }) => day)).toEqual(daysWith((pain) => pain === 6 || pain === 7));
    expect(
      new Set(found.days.map(({ before, after, way }) => `${before.decision} ${after.decision} ${way}`)),
    ).toEqual(new Set(['ease-back hold bolder']));
    expect([daysIn(found.bolder), daysIn(found.moreCautious), found.other]).toEqual([
      found.days.length,
      0,
      0,
    ]);
    expect(found.looked).toBe(2 * painAfter.length);
    expect(new Set(found.days.flatMap(({ rules }) => rules))).toEqual(new Set(['P2']));
  });

  it('a setting moved: severe pain from 7 on calls the clinic at 7, the decision stays', async () => {
    const found = await whatIfOf(access, patientId, withSetting('severe-pain', 7));
    expect(found.days.filter(({ rules }) => rules.includes('P1')).map(({ day }) => day)).toEqual(
      daysWith((pain) => pain === 7),
    );
    expect(new Set(found.days.map(({ way }) => way))).toEqual(new Set(['more-cautious']));
  });

  it('the values in force move nothing', async () => {
    expect((await whatIfOf(access, patientId, withSetting('severe-pain', 8))).days).toEqual([]);
    expect((await whatIfOf(access, patientId, limitOf(5))).days).toEqual([]);
  });

  it('the weeks looked back over begin and end by day', async () => {
    const short = await whatIfOf({ ...access, ...at(14, 12) }, patientId, { ...limitOf(7), weeks: 1 });
    expect(short.since).toBe(at(7).day);
    expect(short.days.every(({ day }) => day >= at(7).day && day <= at(14).day)).toBe(true);
  });

  it('a clinic is the sum of its people, and another clinic has none of it', async () => {
    const own = await whatIfOf(access, patientId, withSetting('severe-pain', 7));
    const all = (await whatIfOfClinic(access, withSetting('severe-pain', 7)))!;
    expect([all.looked, all.other, all.patients]).toEqual([own.looked, own.other, 1]);
    expect(new Set(all.days.map((day) => day.patientId))).toEqual(new Set([patientId]));
    const stranger = { ...access, ...accessOf(store, 'b', 'clinician-b', access.now) };
    expect(await whatIfOfClinic(stranger, withSetting('severe-pain', 7))).toMatchObject({
      looked: 0,
      days: [],
    });
  });
});

describe('a clinic worked out on a thread of its own', () => {
  it('comes to the same, and leaves nothing waiting', async () => {
    const asked = withSetting('severe-pain', 7);
    expect(await whatIfOnThread(access, asked, 'one')).toEqual(await whatIfOfClinic(access, asked));
    expect(progressOf(access, 'one')).toBeNull();
  });

  it('is stopped by whoever asked and by nobody else', async () => {
    const asked = withSetting('severe-pain', 7);
    const colleague = { ...access, actorId: 'clinician-b' };
    const going = whatIfOnThread(access, asked, 'one');
    expect(progressOf(access, 'one')).toEqual({ done: 0, of: 0 });
    expect(progressOf(colleague, 'one')).toBeNull();
    stopJob(colleague, 'one');
    expect(await going).not.toBeNull();
    const ended = whatIfOnThread(access, asked, 'two');
    stopJob(access, 'two');
    expect(await ended).toBeNull();
  });
});
