import { describe, expect, it } from 'vitest';
import { limitsInForce } from '#core/decision/dose/limits.ts';
import { toleratedDoses } from '#core/decision/dose/tolerated.ts';
import { halfWayTo } from '#core/decision/dose/way-back.ts';
import { nextDoses } from '#core/decision/next-doses.ts';
import { evaluate } from '#core/decision/scope.ts';
import type { Limit } from '#core/record/limit.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import {
  instantOn,
  judgedMorning,
  knee,
  kneeDose,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  shoulderVersion,
  version,
  withMorning,
  withSession,
} from './small-record.ts';

const ladder = { harder: () => null, easier: () => null };
const context = () => ({ ladder, easeBacksBefore: 0 });
const dayToday = dayNumber(judgedMorning);
const _at = (days: number): number => instantOn(addDays(judgedMorning, -days), 12);

const eased = { ...kneeDose, repetitions: { low: 11, high: 15 } };
const easedVersions: readonly PrescriptionVersion[] = [
  version({ endedAt: instantOn(lastSession, 9) }),
  version({
    id: 'knee-2',
    version: 2,
    dose: eased,
    signedAt: instantOn(lastSession, 9),
    origin: 'ease-back',
  }),
  shoulderVersion,
];
const afterCut = withSession(
  record({ prescriptions: easedVersions }),
  session(lastSession, {}, {}, [easedVersions[1]!, shoulderVersion]),
);

describe('the way back', () => {
  it('after one clear evaluation goes half-way to the dose tolerated before, named as a return, to be signed', () => {
    const proposal = nextDoses(afterCut, evaluate(afterCut, noonOf(judgedMorning)), context).get('knee');
    expect(proposal).toMatchObject({
      kind: 'return',
      effect: 'awaits-signature',
      named: ['return-not-step'],
    });
    expect(proposal?.dose).toEqual({ ...kneeDose, repetitions: { low: 13, high: 18 } });
  });

  it('does not return while an evaluation is not clear', () => {
    const sore = withMorning(afterCut, morning(judgedMorning, { pain: 2 }));
    expect(nextDoses(sore, evaluate(sore, noonOf(judgedMorning)), context).get('knee')?.kind).toBe('same');
  });

  it('a dose is tolerated by a full session judged the morning after without complaint, and by nothing less', () => {
    const found = (of: ReturnType<typeof record>) =>
      toleratedDoses(of, 'knee', [knee], noonOf(judgedMorning)).map((one) => [one.dose, one.day]);
    expect(found(record())).toEqual([[kneeDose, dayToday - 1]]);
    expect(found(withMorning(record(), morning(judgedMorning, { pain: 2 })))).toEqual([
      [kneeDose, dayToday - 3],
    ]);
    expect(found(withMorning(record(), morning(judgedMorning, { pain: null })))).toEqual([
      [kneeDose, dayToday - 3],
    ]);
  });

  it('an easier session done without complaint says nothing of the dose it stood in for', () => {
    const easier = record().sessions.map((one) => ({ ...one, kind: 'bad-day' as const }));
    expect(toleratedDoses(record({ sessions: easier }), 'knee', [knee], noonOf(judgedMorning))).toEqual([]);
  });

  it('halves repetitions and sets, and lets the load follow only when those are back', () => {
    const few = { ...kneeDose, sets: 2, repetitions: { low: 10, high: 20 }, loadKg: 8 };
    const first = halfWayTo(few, kneeDose, [8, 9, 10]);
    expect(first).toEqual({ ...few, sets: 3, repetitions: { low: 13, high: 20 } });
    expect(halfWayTo({ ...kneeDose, loadKg: 8 }, kneeDose, [8, 9, 10])).toEqual({ ...kneeDose, loadKg: 9 });
    expect(halfWayTo({ ...kneeDose, loadKg: 9 }, kneeDose, [8, 9, 10])).toEqual(kneeDose);
    expect(halfWayTo({ ...kneeDose, loadKg: 8 }, kneeDose, [8])).toBeNull();
    expect(halfWayTo(few, { ...kneeDose, exerciseId: 'another' }, [8, 9, 10])).toBeNull();
  });
});

describe('limits a clinician entered', () => {
  const limit = (changed: Partial<Limit>): Limit => ({
    joint: knee,
    kind: 'load-limit',
    limitKg: 9,
    from: addDays(judgedMorning, -10),
    to: null,
    author: 'surgeon',
    ...changed,
  });
  const proposed = (limits: readonly Limit[]) => {
    const of = record({ limits });
    return nextDoses(of, evaluate(of, noonOf(judgedMorning)), context).get('knee')!;
  };

  it('bind at once, whatever the decision was, on a load the patient owns', () => {
    expect(proposed([limit({})])).toMatchObject({
      kind: 'ease-back',
      effect: 'acts-at-once',
      dose: { loadKg: 9 },
    });
    expect(proposed([limit({ limitKg: 10 })]).dose).toMatchObject({ loadKg: 10 });
    expect(proposed([limit({ limitKg: 5 })])).toMatchObject({
      kind: 'stop',
      contact: 'routine',
      worklist: ['no-dose-within-limit'],
    });
  });

  it('an expired limit still binds and asks again', () => {
    const over = limit({ to: addDays(judgedMorning, -1) });
    expect(proposed([over])).toMatchObject({ dose: { loadKg: 9 }, worklist: ['limit-expired'] });
    expect(proposed([limit({ to: judgedMorning })]).worklist).toEqual([]);
  });

  it('a limit not begun or of another joint does not bind; one lifted no longer does', () => {
    expect(proposed([limit({ from: addDays(judgedMorning, 1) })]).dose).toMatchObject({ loadKg: 10 });
    expect(proposed([limit({ joint: 'right-knee' })]).dose).toMatchObject({ loadKg: 10 });
    const lifted = limit({ kind: 'none', limitKg: null, from: addDays(judgedMorning, -3) });
    expect(limitsInForce([limit({}), lifted], [knee], dayToday)).toEqual([]);
    expect(limitsInForce([lifted, limit({ from: lifted.from })], [knee], dayToday)).toHaveLength(1);
  });
});
