/** Which doses the joints tolerated: what a session and the morning after it must say, and how far back it is looked. */
import { describe, expect, it } from 'vitest';
import { toleratedDoses } from '#core/decision/dose/tolerated.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import {
  baseline,
  eveningOf,
  instantOn,
  judgedMorning,
  knee,
  kneeDose,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  shoulder,
  trainingDays,
  version,
  withMorning,
  withSession,
} from '../small-record.ts';

const today = dayNumber(judgedMorning);
const before = trainingDays.at(-2)!;

/** Days back of the last session tolerated; undefined where none was. */
const toleratedBack = (of: PatientRecord, joints = [knee], at = noonOf(judgedMorning)) => {
  const [found] = toleratedDoses(of, 'knee', joints, at);
  return found && today - found.day;
};

describe('a dose is tolerated', () => {
  it('only where a morning after the session was answered', () => {
    expect(toleratedBack(record())).toBe(1);
    const silent = record({ mornings: record().mornings.filter((one) => one.day !== judgedMorning) });
    expect(toleratedBack(silent)).toBe(3);
    expect(toleratedBack(record({ mornings: [] }))).toBeUndefined();
  });

  it('only where every joint of the line was at peace', () => {
    const { joints } = morning(judgedMorning);
    const sore = morning(
      judgedMorning,
      {},
      {
        joints: joints.map((one) => (one.joint === shoulder ? { ...one, pain: 4 } : one)),
      },
    );
    const of = withMorning(record(), sore);
    expect(toleratedBack(of, [knee])).toBe(1);
    expect(toleratedBack(of, [knee, shoulder])).toBe(3);
  });

  it('where what holds the dose says nothing of the joint, such as baseline values that are old', () => {
    const old = baseline({ setOn: addDays(judgedMorning, -60) });
    expect(toleratedBack(record({ baselines: [old] }))).toBe(1);
  });

  it('only by a session that is known by then, and whose work is of this line', () => {
    const late = session(lastSession, { recordedAt: instantOn(addDays(judgedMorning, 1), 18) });
    expect(toleratedBack(withSession(record(), late))).toBe(3);
    const other = session(lastSession, {}, {}, [version({ id: 'arm-1', itemId: 'arm', joints: [shoulder] })]);
    expect(toleratedBack(withSession(record(), other))).toBe(3);
    expect(toleratedDoses(record(), 'nothing', [knee], noonOf(judgedMorning))).toEqual([]);
  });

  it('says nothing of a session entered so late that another is judged by then', () => {
    const late = session(before, { recordedAt: instantOn(lastSession, 20) });
    const sore = withMorning(withSession(record(), late), morning(judgedMorning, { pain: 5 }));
    expect(toleratedBack(sore)).toBe(5);
  });

  it('on the evening of a session is the one before it', () => {
    expect(toleratedBack(record(), [knee], eveningOf(lastSession))).toBe(3);
  });

  it('by each version once, with the last day it was', () => {
    const second = version({ id: 'knee-2', version: 2, dose: { ...kneeDose, loadKg: 9 } });
    const of = withSession(
      record({ prescriptions: [version(), second] }),
      session(lastSession, {}, {}, [second]),
    );
    const found = toleratedDoses(of, 'knee', [knee], noonOf(judgedMorning));
    expect(found.map(({ dose, day }) => [dose.method === 'low-load' && dose.loadKg, today - day])).toEqual([
      [9, 1],
      [10, 3],
    ]);
  });

  it('is looked for over 84 days', () => {
    const back = (days: number) =>
      toleratedBack(
        record({
          sessions: [session(addDays(judgedMorning, -days))],
          mornings: Array.from({ length: 9 }, (_, place) =>
            morning(addDays(judgedMorning, place - days - 7)),
          ),
          baselines: [baseline({ setOn: addDays(judgedMorning, -120) })],
        }),
      );
    expect([83, 84, 85].map(back)).toEqual([83, 84, undefined]);
  });
});

describe('a first session', () => {
  it('is tolerated like any other, of one set as well', () => {
    expect(toleratedBack(record({ sessions: [session(lastSession)] }))).toBe(1);
    const one = version({ dose: { ...kneeDose, sets: 1 } });
    const done = session(lastSession, {}, {}, [one]);
    const of = record({ prescriptions: [one], sessions: [{ ...done, sets: done.sets.slice(0, 1) }] });
    expect(toleratedBack(of)).toBe(1);
  });

  it('counts from the instant it is known', () => {
    const { instant } = noonOf(judgedMorning);
    const at = (recordedAt: number) =>
      toleratedBack(record({ sessions: [session(lastSession, { recordedAt })] }));
    expect([instant, instant + 1].map(at)).toEqual([1, undefined]);
  });
});

it('a session is judged on the morning after it: tiredness told six days before that still counts, seven days before not', () => {
  const tired = (daysBack: number) =>
    toleratedBack(
      record({
        baselines: [baseline({ usualFatigue: 2 })],
        mornings: record().mornings.map((one) => ({
          ...one,
          fatigue: one.day === addDays(judgedMorning, -daysBack) ? 9 : ('not-applicable' as const),
        })),
      }),
    );
  expect(tired(7)).toBe(1);
  expect(tired(6)).toBe(8);
});
