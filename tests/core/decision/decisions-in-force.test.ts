import { describe, expect, it } from 'vitest';
import type { DecisionWord, Reason } from '#core/decision/answers.ts';
import {
  type ClinicianAnswer,
  decisionsInForce,
  type MadeDecision,
} from '#core/decision/decisions-in-force.ts';
import type { Joint } from '#core/exercises/joints.ts';

const reason = (rule: string, decision: DecisionWord): Reason => ({
  rule,
  observed: {},
  threshold: 'as the rule says',
  support: 'clinic-choice',
  effect: { decision },
});

const made = (
  id: string,
  decision: DecisionWord,
  at: number,
  rules: readonly string[] = ['P2'],
  joint: Joint = 'left-knee',
): MadeDecision => ({
  id,
  joint,
  decision,
  largestStep: decision === 'progress' ? 'load' : null,
  today: decision === 'pause' ? 'none' : 'as-planned',
  contact: decision === 'pause' ? 'same-day' : 'none',
  reasons: rules.map((rule) => reason(rule, decision)),
  evaluatedAt: at,
  cause: 'session',
  sessionId: id,
  morningId: null,
});

const override = (
  decisionId: string,
  decision: DecisionWord,
  until: string,
  answeredAt = 100,
): ClinicianAnswer => ({
  decisionId,
  kind: 'override',
  decision,
  until,
  answeredAt,
});
const accepted = (decisionId: string): ClinicianAnswer => ({
  decisionId,
  kind: 'accept',
  decision: null,
  until: null,
  answeredAt: 100,
});

const knee = (
  decisions: readonly MadeDecision[],
  answers: readonly ClinicianAnswer[] = [],
  day = '2026-03-10',
) => decisionsInForce(decisions, answers, day).get('left-knee');

describe('what stands for a joint', () => {
  it('is the newest decision when nobody has answered and nothing is paused', () => {
    expect(knee([made('a', 'hold', 1), made('b', 'progress', 2)])).toMatchObject({
      decision: 'progress',
      from: 'engine',
      decisionId: 'b',
    });
  });

  it('stays a pause through later good answers, until a clinician has overruled it', () => {
    const decisions = [made('a', 'pause', 1), made('b', 'hold', 2), made('c', 'progress', 3)];
    expect(knee(decisions)).toMatchObject({
      decision: 'pause',
      today: 'none',
      contact: 'same-day',
      from: 'open-pause',
      decisionId: 'a',
    });
    expect(knee(decisions, [accepted('a')])).toMatchObject({ decision: 'pause', from: 'open-pause' });
    expect(knee(decisions, [override('a', 'hold', '2026-03-10')])).toMatchObject({
      decision: 'hold',
      from: 'clinician',
    });
  });

  it('is the clinician’s word through its last day, and the engine’s newest again the day after', () => {
    const decisions = [made('a', 'ease-back', 1), made('b', 'hold', 200)];
    const answers = [override('a', 'progress', '2026-03-10')];
    expect([
      knee(decisions, answers, '2026-03-09'),
      knee(decisions, answers, '2026-03-10'),
      knee(decisions, answers, '2026-03-11'),
    ]).toMatchObject([
      { decision: 'progress', from: 'clinician' },
      { decision: 'progress', from: 'clinician' },
      { decision: 'hold', from: 'engine', decisionId: 'b' },
    ]);
  });

  it('does not bring an overruled pause back when the override ends', () => {
    const decisions = [made('a', 'pause', 1), made('b', 'hold', 2)];
    expect(knee(decisions, [override('a', 'hold', '2026-03-08')])).toMatchObject({
      decision: 'hold',
      from: 'engine',
      decisionId: 'b',
    });
  });

  it('lets a new danger stand before an override, but not the danger the clinician has seen', () => {
    const seen = [made('a', 'pause', 1, ['P1x']), made('b', 'pause', 200, ['P1x'])];
    expect(knee(seen, [override('a', 'hold', '2026-03-12')])).toMatchObject({
      decision: 'hold',
      from: 'clinician',
    });
    const fresh = [made('a', 'pause', 1, ['P1x']), made('b', 'pause', 200, ['W3'])];
    expect(knee(fresh, [override('a', 'hold', '2026-03-12')])).toMatchObject({
      decision: 'pause',
      decisionId: 'b',
    });
  });

  it('lets what a rule unseen at the override leaves of today stand beside it, while it is newest', () => {
    const flare = { today: 'rest-this-joint', contact: 'same-day' } as const;
    const newer = (rule: string, at: number): MadeDecision => ({
      ...made('b', 'ease-back', at, []),
      reasons: [{ ...reason(rule, 'ease-back'), effect: { decision: 'ease-back', ...flare } }],
    });
    const held = [override('a', 'hold', '2026-03-12')];
    const standing = (...later: readonly MadeDecision[]) => knee([made('a', 'ease-back', 1), ...later], held);
    expect(standing(newer('F1', 101))).toMatchObject({ decision: 'hold', from: 'clinician', ...flare });
    // Seen when overruling, made before the answer, or no longer the newest.
    for (const later of [[newer('P2', 101)], [newer('F1', 100)], [newer('F1', 101), made('c', 'hold', 102)]])
      expect(standing(...later)).toMatchObject({ decision: 'hold', today: 'as-planned', contact: 'none' });
  });

  it('takes the newest of two overrides', () => {
    const answers = [override('a', 'ease-back', '2026-03-12', 100), override('a', 'hold', '2026-03-12', 101)];
    expect(knee([made('a', 'progress', 1)], answers)?.decision).toBe('hold');
  });

  it('keeps joints apart', () => {
    const answers = decisionsInForce(
      [made('a', 'pause', 1, ['W3'], 'left-knee'), made('b', 'hold', 2, ['C2'], 'right-elbow')],
      [],
      '2026-03-10',
    );
    expect(['left-knee', 'right-elbow'].map((joint) => answers.get(joint as never)?.decision)).toEqual([
      'pause',
      'hold',
    ]);
  });

  it('leaves a warning sign to its own life: what is left of the decision is at most a hold', () => {
    expect(knee([made('a', 'pause', 1, ['R1'])], [])?.decision).toBe('hold');
    expect(knee([made('a', 'pause', 1, ['R1', 'W3'])], [])?.decision).toBe('pause');
  });
});

describe('an amended answer', () => {
  const amended = (id: string, decision: DecisionWord, at: number, of = 'amended'): MadeDecision => ({
    ...made(id, decision, at),
    cause: 'amendment',
    sessionId: of,
  });
  const word = (decisions: readonly MadeDecision[], answers: readonly ClinicianAnswer[] = []) =>
    knee(decisions, answers)?.decision;

  it('loosens nothing by itself: the decision before it stands until a clinician has answered the new one', () => {
    const both = [made('a', 'ease-back', 1), amended('b', 'progress', 2)];
    expect(word(both)).toBe('ease-back');
    expect(word(both, [accepted('a')])).toBe('ease-back');
    expect(word(both, [accepted('b')])).toBe('progress');
  });

  it('may be stricter at once', () => {
    expect(word([made('a', 'progress', 1), amended('b', 'hold', 2)])).toBe('hold');
  });

  it('amended again keeps the strictest of all, also of an amendment between', () => {
    expect(word([made('a', 'hold', 1), amended('b', 'ease-back', 2), amended('c', 'progress', 3)])).toBe(
      'ease-back',
    );
  });

  it('still counts when a clinician’s entry lets the same session be judged anew', () => {
    const anew: MadeDecision = { ...made('c', 'progress', 3), cause: 'clinician', sessionId: 'amended' };
    expect(word([made('a', 'ease-back', 1), amended('b', 'hold', 2), anew])).toBe('ease-back');
  });

  it('no longer matters once another session is judged', () => {
    expect(word([made('a', 'ease-back', 1), amended('b', 'hold', 2), made('c', 'progress', 3)])).toBe(
      'progress',
    );
  });

  it('does not bring back what a clinician has overruled', () => {
    const both = [made('a', 'pause', 1), amended('b', 'hold', 2)];
    expect(knee(both, [override('a', 'hold', '2026-03-09')])?.decision).toBe('hold');
  });

  it('that takes a warning sign back lifts no pause found with it, and by itself gives no step up', () => {
    const both = [made('a', 'pause', 1, ['R1', 'W3']), amended('b', 'progress', 2)];
    expect(knee(both, [accepted('b')])).toMatchObject({ decision: 'pause', from: 'open-pause' });
    expect(word([made('a', 'pause', 1, ['R1']), amended('b', 'progress', 2)])).toBe('hold');
  });
});
