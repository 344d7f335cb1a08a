/** What followed each rule, from a history made by hand in a real file: the figures are counted below, not by the product. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { takeMorning } from '#data/entries/take-entry.ts';
import { addPatient } from '#data/patients/people.ts';
import { asClinician } from '#tests/support/callers.ts';
import {
  accessOf,
  morningEntry,
  type Setting,
  signedExercise,
  start,
  twoClinics,
} from '#tests/support/clinic.ts';
import { sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs } from '#tests/support/working-patient.ts';

let store: Store;
let setting: Setting;
const at = (day: number, hour = 9) =>
  accessOf(store, 'a', 'clinician-a', start + day * dayMs + (hour - 9) * 3_600_000, 'Clinician A');

const morning = (patientId: string, day: number, pain: number, flare: boolean) =>
  takeMorning(
    at(day),
    patientId,
    morningEntry({
      entryId: `m-${patientId}-${day}`,
      answeredAt: at(day).now,
      sentAt: at(day).now,
      day: at(day).day,
      joints: [
        {
          joint: 'right-knee',
          pain,
          stiffnessMinutes: 5,
          stiffnessState: 'asked',
          swelling: 'none',
          swellingState: 'asked',
          flare,
        },
      ],
    }),
  );

/** Each had one session with pain of 6, over the limit of 5; then five different weeks. */
const weeks: readonly ((patientId: string) => Promise<unknown>)[] = [
  (id) => morning(id, 3, 2, true),
  (id) => morning(id, 3, 7, false),
  (id) => morning(id, 3, 2, false),
  async () => undefined,
  async (patientId) => {
    const [made] = await decisionsOf(at(1), patientId, '2026-01-01');
    const response = {
      decisionId: made!.id,
      kind: 'override',
      decision: 'hold',
      until: at(4).day,
      reason: 'Seen.',
    };
    await asClinician(at(1)).clinician.review.respond({ patientId, response });
    await morning(patientId, 3, 1, false);
  },
];

beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  const person = { givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: null };
  const ids = [setting.patientId, setting.otherPatientId];
  while (ids.length < weeks.length) ids.push(await addPatient(setting.clinician, person));
  for (const [place, lived] of weeks.entries()) {
    const item = await signedExercise(at(0), ids[place]!);
    await sendSession(at(0, 18), ids[place]!, item, 6);
    await lived(ids[place]!);
  }
}, 60_000);
afterAll(() => store.close());

const rowsOn = async (day: number) => {
  const { rows } = await asClinician(at(day)).clinician.rules.followed();
  return new Map(rows.map((row) => [row.rule as string, row.figures]));
};
/** Of the decisions on the sessions of the first day: those on later mornings have not been there for seven days. */
const firstWeekOver = 9;

describe('what followed each rule in a clinic', () => {
  it('is a flare, pain over the limit, neither twice and no answer, as they were lived', async () => {
    const p2 = (await rowsOn(firstWeekOver)).get('P2')!;
    expect(Object.fromEntries(Object.entries(p2.followed).map(([key, { count }]) => [key, count]))).toEqual({
      flare: 1,
      'over-limit': 1,
      nothing: 2,
      'no-answer': 1,
    });
    expect(p2.followed.flare.interval!.low).toBeGreaterThan(0);
    expect(p2.followed.flare.interval!.high).toBeLessThan(0.7);
  });

  it('counts an override by its direction, and later decisions as too early to say', async () => {
    const p2 = (await rowsOn(firstWeekOver)).get('P2')!;
    expect(p2.overruled).toEqual({ bolder: 1, moreCautious: 0, same: 0 });
    expect(p2.fired - p2.tooEarly).toBe(5);
    expect(p2.decided).toBe(p2.fired);
  });

  it('leaves out a rule that fewer than five people are behind, and knows nothing of another clinic', async () => {
    const rows = await rowsOn(firstWeekOver);
    expect(rows.get('F2')).toBeNull();
    const { rows: others } = await asClinician(setting.stranger).clinician.rules.followed();
    expect(new Set(others.map(({ figures }) => figures?.fired))).toEqual(new Set([0]));
  });

  it('says nothing of a week that is not over', async () => {
    const p2 = (await rowsOn(7)).get('P2')!;
    expect(p2.tooEarly).toBe(p2.fired);
  });
});
