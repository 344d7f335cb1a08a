/** A file taken into a record: whole or not at all, marked as imported, taken back as one, and read by no rule. */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { joints } from '#core/exercises/joints.ts';
import { addDays } from '#core/time/day.ts';
import { verifyRows } from '#data/audit/verify-rows.ts';
import type { Store } from '#data/database/store.ts';
import { decisionsNow } from '#data/decision/evaluate.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { type PlacedThing, takeImport } from '#data/exchange/imports.ts';
import { patientOf } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { asClinician } from '#tests/support/callers.ts';
import { auditKey, type Setting, sessionEntry, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  await signedExercise(setting.clinician, setting.patientId);
  await takeSession(setting.clinician, setting.patientId, sessionEntry({ entryId: 'one' }));
});
afterEach(() => store.close());

const imports = () => asClinician(setting.clinician).clinician.imports;
const fileOf = (text: string, over: object = {}) => ({
  ...{ patientId: setting.patientId, name: 'diary.csv', base64: Buffer.from(text).toString('base64') },
  ...{ format: 'csv', kind: 'mornings', separator: 'comma', encoding: 'utf-8', days: 'YYYY-MM-DD' },
  ...{ decimal: 'point', map: '', isLines: false, confirmed: [], leavesOutFaulty: false },
  ...over,
});
type File = Parameters<ReturnType<typeof imports>['take']>[0];
const check = (text: string, over: object = {}) => imports().check(fileOf(text, over) as File);
const take = (text: string, over: object = {}) => imports().take(fileOf(text, over) as File);
const list = () => imports().list({ patientId: setting.patientId });
const counted = (table: string) =>
  (store.reader.client.prepare(`SELECT count(*) AS n FROM ${table}`).get() as { n: number }).n;

const mornings = (days: number, pain = (at: number) => at % 4): string =>
  [
    'day,joint,pain',
    ...Array.from({ length: days }, (_, at) => `${addDays('2026-02-01', at)},right-knee,${pain(at)}`),
  ].join('\n');

describe('a file taken in', () => {
  it('is one import with its rows, each told as imported, and is in the audit with its rows vouched for', async () => {
    await take(mornings(20));
    const { imports: taken, rows } = await list();
    expect(taken).toMatchObject([
      { source: 'diary.csv', rows: 20, leftOut: 0, byName: 'clinician-a', undone: null },
    ]);
    expect(taken[0]?.how).toMatchObject({ kind: 'mornings', columns: 'day=day, joint=joint, pain=pain' });
    expect(rows[0]).toMatchObject({ kind: 'morning', day: '2026-02-20', value: { pain: 3 } });
    expect(await verifyRows(store, auditKey, ['a'])).toMatchObject({ wrong: 0, unknown: 0 });
  });

  it('is looked through first without anything being kept, but that it was', async () => {
    const looked = await check(mornings(3));
    expect(looked.report).toMatchObject({ taken: 3, firstDay: '2026-02-01', lastDay: '2026-02-03' });
    expect([counted('import_batch'), counted('imported_row')]).toEqual([0, 0]);
  });

  it('is not taken with a wrong row, an open question, or a column nobody has said', async () => {
    await expect(take(mornings(3, () => 11))).rejects.toThrow(/3 of 3 rows cannot be taken/);
    await expect(take(`${mornings(3)}\n2026-02-01,right-knee,1`)).rejects.toThrow(/same-day-twice/);
    await expect(take(mornings(3).replace('pain', 'Schmerz'))).rejects.toThrow(/pain=Schmerz/);
    expect([counted('import_batch'), counted('imported_row')]).toEqual([0, 0]);
  });

  it('is not taken twice, until it was taken back', async () => {
    const { id } = await take(mornings(3));
    await expect(take(mornings(3))).rejects.toThrow(/taken before, as "diary.csv"/);
    await imports().undo({ patientId: setting.patientId, importId: id, reason: 'Wrong person' });
    await expect(take(mornings(3))).resolves.toHaveProperty('id');
  });

  it('is taken once where two send it at the same time', async () => {
    const ends = await Promise.allSettled([take(mornings(3)), take(mornings(3))]);
    expect(ends.map(({ status }) => status).toSorted()).toEqual(['fulfilled', 'rejected']);
    expect(counted('import_batch')).toBe(1);
  });

  it('is not there at all where it changed while it was read, or broke off', async () => {
    const batch = { format: 'csv', source: 'a', fileDigest: 'a', how: {}, rows: 2, leftOut: 0 } as const;
    const thing: PlacedThing = {
      ...{ place: 2, kind: 'condition', day: null },
      value: { text: 'Osteoarthritis' },
    };
    const one = async function* () {
      yield [thing];
    };
    const two = async function* () {
      yield [thing, thing];
    };
    const broken = async function* () {
      yield [thing];
      throw new Error('The disk is gone.');
    };
    const { clinician, patientId } = setting;
    const same = async () => true;
    await expect(takeImport(clinician, patientId, batch, one(), same)).rejects.toThrow('changed');
    await expect(takeImport(clinician, patientId, batch, two(), async () => false)).rejects.toThrow(
      'changed',
    );
    await expect(takeImport(clinician, patientId, batch, broken(), same)).rejects.toThrow('disk');
    expect([counted('import_batch'), counted('imported_row')]).toEqual([0, 0]);
  });

  it('is of one clinic: nobody of another one sees, takes or takes back', async () => {
    const { id } = await take(mornings(3));
    const stranger = asClinician(setting.stranger).clinician.imports;
    await expect(stranger.list({ patientId: setting.patientId })).rejects.toMatchObject({
      problem: 'not-found',
    });
    await expect(
      stranger.undo({ patientId: setting.strangerPatientId, importId: id, reason: 'x' }),
    ).rejects.toThrow(/not of this record/);
  });
});

describe('an import taken back', () => {
  it('keeps its rows, counts for nothing, and says who did it and why; once', async () => {
    const { id } = await take(mornings(20));
    const back = { patientId: setting.patientId, importId: id, reason: 'The diary of somebody else' };
    await imports().undo(back);
    const { imports: taken, rows, usual } = await list();
    expect(taken[0]?.undone).toMatchObject({ by: 'clinician-a', reason: back.reason });
    expect([rows, usual, counted('imported_row')]).toEqual([[], [], 20]);
    await expect(imports().undo(back)).rejects.toThrow(/already/);
  });
});

describe('imported mornings', () => {
  it('say what usual pain they show, from seven of the last fourteen days, and set nothing', async () => {
    const before = counted('baseline');
    await take(mornings(6));
    expect((await list()).usual).toEqual([]);
    await take(mornings(7, () => 3));
    expect((await list()).usual).toEqual([
      {
        ...{ joint: 'right-knee', medianPain: 3, mornings: 7 },
        ...{ firstDay: '2026-02-01', lastDay: '2026-02-07' },
      },
    ]);
    expect(counted('baseline')).toBe(before);
  });
});

describe('no rule reads what was imported', () => {
  const { constantFrom, integer, option, record } = fc;
  const day = integer({ min: 0, max: 400 }).map((days) => addDays('2026-03-02', -days));
  const score = option(integer({ min: 0, max: 10 }));
  const morning = record({
    joint: constantFrom(...joints),
    pain: score,
    stiffnessMinutes: score,
    fatigue: score,
  });
  const session = record({
    ...{ exercise: constantFrom('Squat', null), joint: option(constantFrom(...joints)), sets: score },
    ...{ repetitions: score, loadKg: score, painBefore: score, painDuring: score, painAfter: score },
  });
  const measurement = record({
    what: fc.constant('body-mass' as const),
    massKg: integer({ min: 25, max: 350 }),
  });
  const thing = fc.oneof(
    record({ place: fc.constant(2), kind: fc.constant('morning' as const), day, value: morning }),
    record({ place: fc.constant(2), kind: fc.constant('session' as const), day, value: session }),
    record({ place: fc.constant(2), kind: fc.constant('measurement' as const), day, value: measurement }),
  );

  const known = async () => {
    const { clinician, patientId } = setting;
    return JSON.stringify([
      await recordOf(clinician, patientId),
      (await decisionsNow(clinician, patientId)).map(({ id: _id, ...decision }: { id?: string }) => decision),
      await planOf(clinician, (await patientOf(clinician, patientId))!),
      ['decision', 'proposal', 'prescription', 'warning_sign', 'worklist_item', 'baseline'].map(counted),
    ]);
  };

  it('the record the rules see, the decisions, the plan and the worklist are the same before and after', async () => {
    const before = await known();
    await fc.assert(
      fc.asyncProperty(fc.array(thing, { minLength: 1, maxLength: 40 }), async (things) => {
        const batch = { format: 'csv', source: 'a', fileDigest: 'a', how: {}, leftOut: 0 } as const;
        const all = async function* () {
          yield things;
        };
        await takeImport(
          setting.clinician,
          setting.patientId,
          { ...batch, rows: things.length },
          all(),
          async () => true,
        );
        expect(await known()).toBe(before);
      }),
      { numRuns: 15 },
    );
  });
});
