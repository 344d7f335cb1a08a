import { describe, expect, it } from 'vitest';
import { type ApprovalContext, approvalEnd, type PreApproval } from '#core/decision/dose/pre-approval.ts';
import { nextDoses } from '#core/decision/next-doses.ts';
import { evaluate } from '#core/decision/scope.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import type { Limit } from '#core/record/limit.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { instantOn, judgedMorning, knee, kneeDose, noonOf, record, version } from './small-record.ts';

const ladder = { harder: () => null, easier: () => null };
const context = () => ({ ladder, easeBacksBefore: 0 });
const dayToday = dayNumber(judgedMorning);
const at = (days: number): number => instantOn(addDays(judgedMorning, -days), 12);

describe('steps a clinician signed for ahead', () => {
  const approval: PreApproval = {
    id: 'a-1',
    itemId: 'knee',
    signedAt: at(20),
    signedDay: addDays(judgedMorning, -20),
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
    settings: engineDefaults,
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
      limitKg: null,
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

  it('never cover a step over 10 %, one of unknown size, one that loads more joints, a return, or another line', () => {
    for (const name of [
      'over-ten-percent',
      'step-size-unknown',
      'return-not-step',
      'loads-more-joints',
    ] as const) {
      expect(approvalEnd(approval, { ...step, named: [name] }, 'knee', around())).toBe('step-not-covered');
    }
    expect(approvalEnd(approval, { kind: 'return', dose: kneeDose }, 'knee', around())).toBe(
      'step-not-covered',
    );
    expect(approvalEnd(approval, step, 'arm', around())).toBe('other-line');
  });

  it('end by their own number of steps and days where those are fewer', () => {
    const steps = (count: number) =>
      approvalEnd({ ...approval, steps: 2 }, step, 'knee', around({ history: progressed(count) }));
    expect([1, 2].map(steps)).toEqual([null, 'steps-used']);
    const days = (ago: number) =>
      approvalEnd({ ...approval, signedAt: at(ago), days: 14 }, step, 'knee', around());
    expect([14, 15].map(days)).toEqual([null, 'days-over']);
  });

  it('end at what came after the signature: a withdrawal by now, a cut after it, a limit from its day on', () => {
    const withdrawn = (withdrawnAt: number) =>
      approvalEnd({ ...approval, withdrawnAt }, step, 'knee', around());
    expect([at(0), at(0) + 1].map(withdrawn)).toEqual(['withdrawn', null]);
    const eased = (signedAt: number) => {
      const history = [version({ id: 'v-2', version: 2, signedAt, origin: 'ease-back' })];
      return approvalEnd(approval, step, 'knee', around({ history }));
    };
    expect([at(20), at(20) + 1].map(eased)).toEqual([null, 'eased-back-or-paused']);
    const limited = (days: number, kind: Limit['kind'] = 'range') => {
      const from = addDays(judgedMorning, -days);
      const limits: readonly Limit[] = [
        { joint: knee, kind, limitKg: null, from, to: null, author: 'surgeon' },
      ];
      return approvalEnd(approval, step, 'knee', around({ limits }));
    };
    expect([21, 20, 19].map((days) => limited(days))).toEqual([null, 'new-limit', 'new-limit']);
    expect(limited(19, 'none')).toBeNull();
  });

  it('signed on an evening whose day in UTC is the next one end at a limit from the clinic’s day on', () => {
    // 20:00 on a wall five hours behind UTC, as in New York in winter, is 01:00 of the next day in UTC.
    const evening = { ...approval, signedAt: instantOn(addDays(judgedMorning, -19), 1) };
    const limited = (days: number) => {
      const from = addDays(judgedMorning, -days);
      const limits: readonly Limit[] = [
        { joint: knee, kind: 'range', limitKg: null, from, to: null, author: 'surgeon' },
      ];
      return approvalEnd(evening, step, 'knee', around({ limits }));
    };
    expect([21, 20, 19].map(limited)).toEqual([null, 'new-limit', 'new-limit']);
  });

  it('let a step act at once, marked with the approval it leans on', () => {
    const of = record();
    const proposals = nextDoses(of, evaluate(of, noonOf(judgedMorning)), () => ({
      ...context(),
      preApproval: approval,
      screeningUntil: dayToday + 30,
      // Without it a step inside the signed band needs no approval.
      settings: { 'in-band-steps': 0 },
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
