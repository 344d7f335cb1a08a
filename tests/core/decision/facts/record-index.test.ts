/** How a record is put in order where entries fall together, and which joints a session speaks of. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import { judgedSession } from '#core/decision/facts/judged-session.ts';
import { indexRecord } from '#core/decision/facts/record-index.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import type { Baseline, PatientRecord } from '#core/record/record.ts';
import {
  baseline,
  judgedMorning,
  knee,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  shoulder,
  withMorning,
} from '../small-record.ts';

const factsAt = (of: PatientRecord) => factsFor(of, knee, noonOf(judgedMorning));
const judged = (of: PatientRecord, joint = knee) =>
  judgedSession(indexRecord(of), joint, noonOf(judgedMorning), engineDefaults);
const bothOrders = <T>(a: T, b: T): readonly (readonly [T, T])[] => [
  [a, b],
  [b, a],
];

describe('of two baselines set on one day', () => {
  const inForce = (a: Partial<Baseline>, b: Partial<Baseline>) =>
    bothOrders(baseline(a), baseline(b)).map((baselines) => factsAt(record({ baselines })).usualPain);

  it('the one with no usual pain is in force, also beside a usual pain of 0', () => {
    for (const usualPain of [0, 3])
      expect(
        inForce({ usualPain: null, usualPainTop: null }, { usualPain, usualPainTop: usualPain }),
      ).toEqual([null, null]);
  });

  it('the lower top is in force, which is usual pain where nobody widened the band', () => {
    expect(inForce({ usualPain: 3, usualPainTop: null }, { usualPain: 2, usualPainTop: 2 })).toEqual([2, 2]);
    expect(inForce({ usualPain: 2, usualPainTop: null }, { usualPain: 1, usualPainTop: 3 })).toEqual([2, 2]);
  });
});

it('of two sessions begun at one instant the one that is judged does not depend on the order of entry', () => {
  const [a, b] = ['a', 'b'].map((id) => session(lastSession, { id }));
  const ids = bothOrders(a!, b!).map((sessions) => judged(record({ sessions })).session?.session.id);
  expect(ids).toEqual(['b', 'b']);
});

it('of two mornings alike in day, time and arrival the one that counts does not depend on the order of entry', () => {
  const [a, b] = ['a', 'b'].map((id, place) => morning(judgedMorning, { pain: place + 2 }, { id }));
  const pains = bothOrders(a!, b!).map(
    (mornings) => factsAt({ ...record(), mornings: [...mornings] }).painNextMorning,
  );
  expect(pains).toEqual([2, 2]);
});

describe('a session', () => {
  it('of one set speaks of the joints that set loads, whoever else was asked about', () => {
    const one = session(judgedMorning, { recordedAt: 0, beganAt: noonOf(judgedMorning).instant });
    const asked = {
      ...one,
      sets: one.sets.slice(0, 1),
      joints: [...one.joints, { ...one.joints[0]!, joint: shoulder }],
    };
    const of = { ...record(), sessions: [...record().sessions, asked] };
    expect(judged(of).session?.session.day).toBe(judgedMorning);
    expect(judged(of, shoulder).session?.session.day).toBe(lastSession);
  });

  it('that is not known yet is not judged where there is no other', () => {
    const { instant } = noonOf(judgedMorning);
    const of = (recordedAt: number) => judged(record({ sessions: [session(lastSession, { recordedAt })] }));
    expect([instant, instant + 1].map((at) => of(at).state)).toEqual(['complete', 'no-session']);
  });

  it('that loads a joint it was not asked about is judged without answers', () => {
    const facts = factsAt(record({ sessions: [session(lastSession, { joints: [] })] }));
    expect(facts).toMatchObject({ painBefore: null, painDuring: null, painTwoHours: null, gaveWay: false });
    expect(facts.repetitionsDonePercent).toBe(100);
  });
});

it('a morning that tells nothing of a joint leaves it as it was', () => {
  const other = morning(judgedMorning, {}, {}, [shoulder]);
  expect(factsAt(withMorning(record(), other)).painNextMorning).toBeNull();
});
