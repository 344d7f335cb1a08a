import { describe, expect, it } from 'vitest';
import { addDays, dayNumber } from '#core/day.ts';
import { engineDefaults } from '#core/engine/choices.ts';
import { limitsInForce } from '#core/engine/dose/limits.ts';
import { type ApprovalContext, approvalEnd, type PreApproval } from '#core/engine/dose/pre-approval.ts';
import { toleratedDoses } from '#core/engine/dose/tolerated.ts';
import { halfWayTo } from '#core/engine/dose/way-back.ts';
import { nextDoses } from '#core/engine/next-dose.ts';
import { evaluate } from '#core/engine/scope.ts';
import type { Limit, PrescriptionVersion } from '#core/model/record.ts';
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
const at = (days: number): number => instantOn(addDays(judgedMorning, -days), 12);

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
    kind: 'load-ceiling',
    ceilingKg: 9,
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
    expect(proposed([limit({ ceilingKg: 10 })]).dose).toMatchObject({ loadKg: 10 });
    expect(proposed([limit({ ceilingKg: 5 })])).toMatchObject({
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
    const lifted = limit({ kind: 'none', ceilingKg: null, from: addDays(judgedMorning, -3) });
    expect(limitsInForce([limit({}), lifted], [knee], dayToday)).toEqual([]);
    expect(limitsInForce([lifted, limit({ from: lifted.from })], [knee], dayToday)).toHaveLength(1);
  });
});

describe('steps a clinician signed for ahead', () => {
  const approval: PreApproval = {
    id: 'a-1',
    lineId: 'knee',
    signedAt: at(20),
    signedBy: 'clinician-1',
    steps: 3,
    days: 28,
    withdrawnAt: null,
  };
  const step = { kind: 'step', dose: kneeDose } as const;
  const around = (changed: Partial<ApprovalContext> = {}): ApprovalContext => ({
    instant: at(0),
    day: dayToday,
    history: [version({ signedAt: at(60) })],
    decisionsSince: ['hold', 'progress'],
    limits: [],
    screeningUntil: dayToday,
    choices: engineDefaults,
    ...changed,
  });
  const progressed = (count: number): readonly PrescriptionVersion[] =>
    Array.from({ length: count }, (_, place) =>
      version({ id: `v-${place}`, version: place + 2, signedAt: at(10 - place), origin: 'progress' }),
    );

  it('cover an ordinary step', () => {
    expect(approvalEnd(approval, step, 'knee', around())).toBeNull();
  });

  it('end after three steps or four weeks', () => {
    expect(approvalEnd(approval, step, 'knee', around({ history: progressed(2) }))).toBeNull();
    expect(approvalEnd(approval, step, 'knee', around({ history: progressed(3) }))).toBe('steps-used');
    expect(approvalEnd({ ...approval, steps: 9 }, step, 'knee', around({ history: progressed(3) }))).toBe(
      'steps-used',
    );
    expect(approvalEnd({ ...approval, signedAt: at(28) }, step, 'knee', around())).toBeNull();
    expect(approvalEnd({ ...approval, signedAt: at(29), days: 90 }, step, 'knee', around())).toBe(
      'days-over',
    );
  });

  it('end at an ease-back, a pause, a new limit, an expired screening, a withdrawal', () => {
    const eased = version({ id: 'v-2', version: 2, signedAt: at(5), origin: 'ease-back' });
    expect(approvalEnd(approval, step, 'knee', around({ history: [eased] }))).toBe('eased-back-or-paused');
    expect(approvalEnd(approval, step, 'knee', around({ decisionsSince: ['pause'] }))).toBe(
      'eased-back-or-paused',
    );
    const limit: Limit = {
      joint: knee,
      kind: 'range',
      ceilingKg: null,
      from: addDays(judgedMorning, -2),
      to: null,
      author: 'surgeon',
    };
    expect(approvalEnd(approval, step, 'knee', around({ limits: [limit] }))).toBe('new-limit');
    expect(approvalEnd(approval, step, 'knee', around({ screeningUntil: dayToday - 1 }))).toBe(
      'screening-expired',
    );
    expect(approvalEnd(approval, step, 'knee', around({ screeningUntil: null }))).toBe('screening-expired');
    expect(approvalEnd({ ...approval, withdrawnAt: at(1) }, step, 'knee', around())).toBe('withdrawn');
  });

  it('never cover a step over 10 %, one of unknown size, a return, or another line', () => {
    for (const name of ['over-ten-percent', 'step-size-unknown'] as const) {
      expect(approvalEnd(approval, { ...step, named: [name] }, 'knee', around())).toBe('step-not-covered');
    }
    expect(approvalEnd(approval, { kind: 'return', dose: kneeDose }, 'knee', around())).toBe(
      'step-not-covered',
    );
    expect(approvalEnd(approval, step, 'arm', around())).toBe('other-line');
  });

  it('let a step act at once, marked with the approval it leans on', () => {
    const of = record();
    const proposals = nextDoses(of, evaluate(of, noonOf(judgedMorning)), () => ({
      ...context(),
      preApproval: approval,
      screeningUntil: dayToday + 30,
    }));
    expect(proposals.get('knee')).toMatchObject({
      kind: 'step',
      effect: 'acts-at-once',
      preApprovalId: 'a-1',
    });
    expect(proposals.get('arm')).toMatchObject({
      kind: 'step',
      effect: 'awaits-signature',
      preApprovalId: null,
    });
  });
});
