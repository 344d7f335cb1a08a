/** A correction may make the plan stricter at once, and looser only when a clinician has seen the new plan. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addDays } from '#core/time/day.ts';
import { replayableDecisions } from '#data/decision/replayable-decisions.ts';
import { effusionsOf } from '#data/patients/effusions.ts';
import { recordOf } from '#data/patients/record.ts';
import { worklistItem } from '#data/schema/schema.ts';
import { rebuiltWorklistItems } from '#data/worklist/worklist-items.ts';
import { type CareSetting, careSetting, firstDay, limitOn } from '#tests/api/episode/setting.ts';
import { baselineOf, correctionsAt, pressureOf, sheetWith } from './setting.ts';

let at: CareSetting;
let own: ReturnType<typeof correctionsAt>;
/** Day of the last act: what binds from a day on is on the worklist kept on that day. */
let lastDay: number;
beforeEach(async () => {
  at = await careSetting();
  own = correctionsAt(at);
  lastDay = 0;
});
afterEach(async () => {
  const access = at.accessOn(lastDay);
  const kept = await access.store.read.select().from(worklistItem);
  const byKey = (a: { key: string }, b: { key: string }) => (a.key < b.key ? -1 : 1);
  const rebuilt = await rebuiltWorklistItems(access);
  expect(kept.filter(({ clinicId }) => clinicId === 'a').sort(byKey)).toEqual([...rebuilt].sort(byKey));
  at.store.close();
});

const inTheWay = (plan: readonly { readonly inTheWay: readonly string[] }[] | null) =>
  plan!.flatMap((row) => row.inTheWay).join(' ');

describe('a limit entered in error', () => {
  const staff = () => at.clinician().clinician;
  const add = (over: object = {}) => staff().care.addLimit({ patientId: at.patientId, limit: limitOn(over) });

  it('binds beside the looser one in its place, and only the new one binds once the plan was seen', async () => {
    const told = await own.correct('limit', await add({ limitKg: 3 }), limitOn({ limitKg: 10 }));
    expect(told.waitsToBeSeen).toBe(true);
    expect(inTheWay(told.plan)).toMatch(/4 kg is over the limit of 3 kg/);
    expect(inTheWay(told.planOnceSeen)).toBe('');
    const { limits } = await staff().care.list({ patientId: at.patientId });
    expect(limits.map(({ limitKg, correctedPending }) => [limitKg, correctedPending])).toEqual([
      [3, true],
      [10, undefined],
    ]);
    expect(inTheWay((await own.seen(told.correctionId)).plan)).toBe('');
    const after = await staff().care.list({ patientId: at.patientId });
    expect(after.limits.map(({ limitKg }) => limitKg)).toEqual([10]);
  });

  it('gives way to a stricter one at once', async () => {
    const told = await own.correct('limit', await add({ limitKg: 10 }), limitOn({ limitKg: 3 }));
    expect(inTheWay(told.plan)).toMatch(/4 kg is over the limit of 3 kg/);
  });

  it('and struck out binds until the plan without it was seen', async () => {
    const told = await own.correct('limit', await add({ limitKg: 3 }));
    expect(told.replacedById).toBeNull();
    expect(inTheWay(told.plan)).toMatch(/limit of 3 kg/);
    expect(inTheWay((await own.seen(told.correctionId)).plan)).toBe('');
  });

  it('that ended the limits before it ends nothing any more, at once', async () => {
    await add({ limitKg: 3 });
    const end = await add({ kind: 'none', limitKg: null, from: addDays(firstDay, 1) });
    const later = async () =>
      (await at.clinician(1).clinician.prescriptions.catalogue({ patientId: at.patientId })).limited.length;
    expect(await later()).toBe(0);
    await own.correct('limit', end);
    expect(await later()).toBeGreaterThan(0);
  });

  it('is not ended by an end put in its place before the plan was seen', async () => {
    const wrong = await add({ limitKg: 3 });
    await add({ limitKg: 2 });
    const end = limitOn({ kind: 'none', limitKg: null, from: addDays(firstDay, 1) });
    const told = await own.correct('limit', wrong, end, 1);
    expect(inTheWay(told.plan)).toMatch(/limit of 2 kg/);
    expect(inTheWay((await own.seen(told.correctionId, 1)).plan)).toBe('');
    lastDay = 1;
  });

  it('corrected twice before anybody looked leaves all three binding', async () => {
    const first = await own.correct('limit', await add({ limitKg: 3.5 }), limitOn({ limitKg: 2 }));
    const second = await own.correct('limit', first.replacedById!, limitOn({ limitKg: 20 }));
    expect(inTheWay(second.plan)).toMatch(/limit of 3.5 kg.*limit of 2 kg/);
    await own.seen(first.correctionId);
    expect(inTheWay((await own.seen(second.correctionId)).plan)).toBe('');
  });
});

describe('an event entered in error', () => {
  const event = (over: object = {}) => ({
    day: firstDay,
    kind: 'illness',
    joint: null,
    remark: null,
    ...over,
  });

  it('rests the exercises until the plan without it was seen', async () => {
    const id = await at.clinician(1).clinician.care.addEvent({
      patientId: at.patientId,
      event: event({ day: addDays(firstDay, 1) }),
    });
    const told = await own.correct('event', id, undefined, 1);
    expect(told.plan.map(({ today }) => today)).toEqual(['rest-this-joint']);
    expect(told.planOnceSeen!.map(({ today }) => today)).not.toContain('rest-this-joint');
    expect((await own.seen(told.correctionId, 1)).plan.map(({ today }) => today)).not.toContain(
      'rest-this-joint',
    );
  });

  it('has its effect beside that of the event in its place', async () => {
    const wrong = event({ kind: 'joint-injection', joint: 'right-knee' });
    const id = await at.clinician().clinician.care.addEvent({ patientId: at.patientId, event: wrong });
    await own.correct('event', id, event({ kind: 'fall' }), 1);
    const { events } = await at.clinician(1).clinician.care.list({ patientId: at.patientId });
    expect(events.map(({ kind, correctedPending }) => [kind, correctedPending === true]).sort()).toEqual([
      ['fall', false],
      ['joint-injection', true],
    ]);
    const newest = (await replayableDecisions(at.accessOn(1), at.patientId, firstDay)).at(-1)!;
    expect(newest.facts.treatmentChangeDays).not.toBeNull();
  });
});

describe('a screening answer entered in error', () => {
  const lowLoad = async (day = 0) =>
    (await at.clinician(day).clinician.screening.outcomes({ patientId: at.patientId })).find(
      ({ method, limb, side }) => method === 'low-load' && limb === 'leg' && side === 'right',
    )!.eligibility;

  it('that should have been yes closes at once', async () => {
    const told = await own.correct('screening', await own.newest('screening'), sheetWith(['swollen-calf']));
    expect(inTheWay(told.plan)).toMatch(/not available here/);
    expect(inTheWay((await own.seen(told.correctionId)).plan)).toMatch(/not available here/);
  });

  it('that should have been no opens only when the plan was seen; one answer is changed, the day stays', async () => {
    const staff = at.clinician(1, '10:00').clinician;
    await staff.screening.record({ patientId: at.patientId, screening: sheetWith(['swollen-calf']) });
    const told = await own.correct('screening', await own.newest('screening'), sheetWith([]), 3);
    expect(inTheWay(told.plan)).toMatch(/not available here/);
    expect(inTheWay(told.planOnceSeen)).toBe('');
    expect(await lowLoad(3)).toMatch(/^closed/);
    await own.seen(told.correctionId, 3);
    expect(await lowLoad(3)).toMatch(/^open/);
    const [newest] = await staff.screening.list({ patientId: at.patientId });
    expect(newest!.day).toBe(addDays(firstDay, 1));
  });

  it('asks nothing again: an event after the wrong sheet still waits for a screening', async () => {
    const wrong = await own.newest('screening');
    const { care } = at.clinician(0, '10:00').clinician;
    const event = { day: firstDay, kind: 'illness', joint: null, remark: null };
    await care.addEvent({ patientId: at.patientId, event });
    const told = await own.correct('screening', wrong, sheetWith([]), 0, '11:00');
    const { plan } = await own.seen(told.correctionId, 0, '11:00');
    expect(plan.map(({ today }) => today)).toEqual(['rest-this-joint']);
  });

  it('of an older sheet does not stand before the newer one', async () => {
    const older = await own.newest('screening');
    const staff = at.clinician(1).clinician;
    await staff.screening.record({ patientId: at.patientId, screening: sheetWith(['swollen-calf']) });
    const told = await own.correct('screening', older, sheetWith([]), 2);
    await own.seen(told.correctionId, 2);
    expect(await lowLoad(2)).toMatch(/^closed/);
  });

  it('struck out with none before it leaves nobody screened, at once', async () => {
    const told = await own.correct('screening', await own.newest('screening'));
    expect(inTheWay(told.plan)).toMatch(/No screening recorded/);
  });
});

describe('a blood pressure entered in error', () => {
  const measure = (systolic: number, diastolic: number) =>
    at.clinician().clinician.measurements.record({
      patientId: at.patientId,
      measurement: pressureOf(systolic, diastolic),
      confirmed: true,
    });

  // 180/110 holds everything: the figures of the screening's own table, a choice of this project.
  it.each([
    ['179/109', 179, 109, false],
    ['180/109', 180, 109, true],
    ['181/109', 181, 109, true],
  ])(
    'of %s holds all work beside a lower one until the plan was seen',
    async (_, systolic, diastolic, holds) => {
      const id = await measure(systolic, diastolic);
      const told = await own.correct('measurement', id, pressureOf(120, 80, firstDay), 1);
      expect(/all resistance work is held/.test(inTheWay(told.plan))).toBe(holds);
      expect(inTheWay((await own.seen(told.correctionId, 1)).plan)).toBe('');
    },
  );

  it('closes at once where the true one is higher, also where it was taken on an earlier day', async () => {
    const id = await measure(120, 80);
    const told = await own.correct('measurement', id, pressureOf(190, 100, addDays(firstDay, -1)), 1);
    expect(inTheWay(told.plan)).toMatch(/all resistance work is held/);
  });
});

describe('usual values and a knee test entered in error', () => {
  const usualNow = async () => (await recordOf(at.accessOn(0), at.patientId))!.baselines.at(-1)!;

  it('count with the lower of each value until the plan was seen, and keep the day they speak of', async () => {
    const id = await at
      .clinician()
      .clinician.review.setBaseline({ patientId: at.patientId, baseline: baselineOf() });
    const right = baselineOf({
      usualPain: 5,
      usualPainTop: 6,
      acceptablePainLimit: 7,
      usualStiffnessMinutes: 5,
    });
    const told = await own.correct('baseline', id, right, 3);
    expect(await usualNow()).toMatchObject({
      usualPain: 3,
      usualPainTop: 4,
      acceptablePainLimit: 6,
      usualStiffnessMinutes: 5,
      setOn: firstDay,
      correctedPending: true,
    });
    await own.seen(told.correctionId, 3);
    const settled = await usualNow();
    expect(settled).toMatchObject({ usualPain: 5, acceptablePainLimit: 7, setOn: firstDay });
    expect(settled.correctedPending).toBeUndefined();
  });

  it.each([
    ['zero', '2+', '2+'],
    ['2+', 'zero', '2+'],
  ])(
    'a test of %s that should have been %s counts as %s until the plan was seen',
    async (was, now, counts) => {
      const id = await at.clinician().clinician.measurements.recordEffusion({
        patientId: at.patientId,
        effusion: { joint: 'right-knee', grade: was },
      });
      const told = await own.correct('effusion-test', id, { joint: 'right-knee', grade: now }, 1);
      const grades = async () =>
        (await effusionsOf(at.accessOn(1), at.patientId)).map(({ day, grade }) => [day, grade]);
      expect(await grades()).toEqual([[firstDay, counts]]);
      await own.seen(told.correctionId, 1);
      expect(await grades()).toEqual([[firstDay, now]]);
    },
  );
});
