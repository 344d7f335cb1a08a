import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { type BeforeFacts, preSessionCheck } from '#core/decision/pre-session-check.ts';
import { evaluate, inForceUntilAcknowledged } from '#core/decision/scope.ts';
import { baseFacts, facts } from './base-facts.ts';
import {
  judgedMorning,
  knee,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  shoulder,
  shoulderVersion,
  version,
  withMorning,
  withSession,
} from './small-record.ts';

const both = [version(), shoulderVersion];
const linesOf = (of: ReturnType<typeof record>) =>
  Object.fromEntries(evaluate(of, noonOf(judgedMorning)).items.map((item) => [item.itemId, item]));

describe('scope is the joint', () => {
  it('a sore knee does not hold an arm', () => {
    const items = linesOf(withSession(record(), session(lastSession, {}, { painDuring: 7 }, both)));
    expect([items.knee?.decision, items.arm?.decision]).toEqual(['ease-back', 'progress']);
    expect(items.knee?.reasons.map((one) => [one.joint, one.rule])).toContainEqual([knee, 'P2']);
  });

  it('two sore joints under one exercise give the lower decision, with the reasons of both', () => {
    const shared = version({ joints: [knee, shoulder] });
    const sore = withMorning(record({ prescriptions: [shared] }), morning(judgedMorning, { pain: 2 }));
    const last = session(lastSession, {}, {}, [shared]);
    const joints = last.joints.map((one) => (one.joint === shoulder ? { ...one, painDuring: 6 } : one));
    const { knee: item } = linesOf(withSession(sore, { ...last, joints }));
    expect(item?.decision).toBe('ease-back');
    expect(item?.reasons.map((one) => `${one.joint} ${one.rule}`)).toEqual([
      'right-shoulder P2',
      'right-shoulder P4',
      'left-knee P5h',
    ]);
  });

  it('a red flag anywhere stops every line and is the most urgent contact', () => {
    const flagged = withMorning(record(), morning(judgedMorning, {}, { redFlags: ['fainting'] }));
    const evaluation = evaluate(flagged, noonOf(judgedMorning));
    expect([evaluation.redFlag, evaluation.contact]).toEqual([true, 'emergency']);
    expect(evaluation.items.map((item) => [item.decision, item.today])).toEqual([
      ['pause', 'none'],
      ['pause', 'none'],
    ]);
  });

  it('a red flag one joint still carries stops a line whose own last session came after it', () => {
    const flagged = withMorning(record(), morning('2026-02-19', {}, { redFlags: ['chest-pain'] }));
    const sessions = flagged.sessions.map((one) =>
      one.day === lastSession ? session(lastSession, {}, {}, [shoulderVersion]) : one,
    );
    const items = linesOf({ ...flagged, sessions });
    expect([items.knee?.decision, items.arm?.decision, items.arm?.today]).toEqual(['pause', 'pause', 'none']);
  });

  it('a joint loaded on the way and never asked about does not hold a line its followed joint frees', () => {
    const carried = version({ joints: [knee, 'left-hip'] });
    const of = record({ prescriptions: [carried, shoulderVersion] });
    expect(linesOf(of).knee).toMatchObject({ decision: 'progress', limitingJoints: [knee] });
  });

  it('a line none of whose joints is asked about is held: unknown never progresses', () => {
    const unasked = version({ id: 'wrist-1', itemId: 'wrist', joints: ['left-wrist'] });
    const of = record({ prescriptions: [version(), shoulderVersion, unasked] });
    expect(linesOf(of).wrist?.decision).toBe('hold');
  });

  it('an ended version is not in force, the newest of a line is', () => {
    const ended = version({ endedAt: noonOf(lastSession).instant });
    const second = version({ id: 'knee-2', version: 2, signedAt: noonOf(lastSession).instant });
    const of = record({ prescriptions: [second, ended, shoulderVersion] });
    expect(linesOf(of).knee?.version.id).toBe('knee-2');
  });

  it('after an amendment the more cautious of both decisions stands in each answer', () => {
    const first = decide(facts({ swelling: 'clear' }));
    const amended = decide(facts({ painDuring: 8 }));
    expect(inForceUntilAcknowledged(first, amended)).toEqual({
      decision: 'ease-back',
      largestStep: null,
      today: 'rest-this-joint',
      contact: 'same-day',
    });
    expect(
      inForceUntilAcknowledged(decide(facts({ sessionsOnTarget: 1 })), decide(baseFacts)).largestStep,
    ).toBe('repetitions');
  });
});

const atTheDoor = (changed: Partial<BeforeFacts> = {}): BeforeFacts => ({ ...baseFacts, ...changed });

describe('before a session', () => {
  it('pain before under 5, at 5 and over the ceiling: as planned, easier, easier', () => {
    const todays = [4, 5, 6].map((painBefore) => preSessionCheck(atTheDoor({ painBefore })).today);
    expect(todays).toEqual(['as-planned', 'bad-day', 'bad-day']);
  });

  it('pain of 10, a red flag, clear swelling and a long flare leave less', () => {
    expect(preSessionCheck(atTheDoor({ painBefore: 10 }))).toMatchObject({
      today: 'none',
      contact: 'same-day',
    });
    expect(preSessionCheck(atTheDoor({ redFlags: ['chest-pain'] }))).toMatchObject({
      today: 'none',
      contact: 'emergency',
    });
    expect(preSessionCheck(atTheDoor({ swelling: 'clear' })).today).toBe('rest-this-joint');
    expect(preSessionCheck(atTheDoor({ flareDays: 2 })).today).toBe('bad-day');
    // Version 2 keeps a joint moving in a long flare; version 1 rested it.
    expect(preSessionCheck(atTheDoor({ flareDays: 8 }))).toMatchObject({
      today: 'bad-day',
      contact: 'routine',
    });
    expect(preSessionCheck(atTheDoor({ flareDays: 8 }), { 'engine-version': 1 }).today).toBe(
      'rest-this-joint',
    );
  });

  it('the last session does not speak at the door, even when its facts are handed over', () => {
    const last = { painDuring: 10, painNextMorning: 9, painLaterMorning: 9, gapDays: 20 } as const;
    const before = { twoOverBefore: true, morningsOverTop: 9, usualPainProvisional: true, usualPainRise: 4 };
    const whole = { ...facts({ ...last, ...before }), painBefore: 1 };
    expect(preSessionCheck(whole)).toMatchObject({ today: 'as-planned', contact: 'none', reasons: [] });
  });

  it('nothing starts before the red flag questions; with pain unknown only the easier session does', () => {
    expect(preSessionCheck(atTheDoor({ redFlags: null }))).toMatchObject({
      today: 'none',
      unanswered: ['redFlags'],
    });
    expect(preSessionCheck(atTheDoor({ painBefore: null }))).toMatchObject({
      today: 'bad-day',
      unanswered: ['painBefore'],
    });
  });
});
