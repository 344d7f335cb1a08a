/** An open question holds the dose and is told as left out; what was answered is told as answered. */
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { explainToPatient } from '#core/decision/explain.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import { leftOutRule } from '#core/decision/left-out.ts';
import type { JointSessionAnswers, SessionRecord } from '#core/record/record.ts';
import { leftOutText, ruleText } from '#messages/decisions.ts';
import {
  judgedMorning,
  knee,
  lastSession,
  noonOf,
  record,
  session,
  version,
  withSession,
} from '../small-record.ts';

const judged = (over: Partial<SessionRecord> = {}, answers: Partial<JointSessionAnswers> = {}) => {
  const one = session(lastSession, over, answers);
  const whole = withSession(record(), one);
  const { because } = explainToPatient(decide(factsFor(whole, knee, noonOf(judgedMorning))));
  return because.map((rule) => [
    rule,
    leftOutRule(rule, { session: one, joint: knee, versions: [version()] }),
  ]);
};
const sets = (reserve: number | null) => session(lastSession).sets.map((set) => ({ ...set, reserve }));

describe('a dose held by a question about the session', () => {
  it.each([
    ['giving way', 'D4', {}, { gaveWay: null }, {}, { gaveWay: true }],
    ['extra work', 'D3', { didExtra: null }, {}, { didExtra: true }, {}],
    ['extra pain relief', 'D1', { extraPainRelief: null }, {}, { extraPainRelief: true }, {}],
    ['repetitions in reserve', 'C3', { sets: sets(null) }, {}, { sets: sets(0) }, {}],
  ] as const)(
    '%s: left open it is told as left out, answered as answered',
    (_name, rule, open, openJoint, told, toldJoint) => {
      expect(judged(open, openJoint)).toEqual([[rule, rule]]);
      expect(judged(told, toldJoint)).toEqual([[rule, null]]);
    },
  );

  it('an exercise with no repetitions in reserve leaves none out', () => {
    const none = version({ dose: { ...version().dose, reserve: 0 } as never });
    const open = { session: session(lastSession, { sets: sets(null) }), joint: knee, versions: [none] };
    expect(leftOutRule('C3', open)).toBeNull();
    expect(leftOutRule('P2', open)).toBeNull();
  });
});

describe('the sentence', () => {
  const rules = ['D1', 'D3', 'D4', 'C3'] as const;

  it('says that it was left out and that the dose stays, and accuses nobody', () => {
    for (const rule of rules) {
      const { en, de } = leftOutText(rule);
      expect(en).toMatch(/^You left out .*, so your dose stays the same\.$/);
      expect(de).toMatch(/^Sie haben offengelassen, .*\. Darum bleibt Ihr Training gleich\.$/);
      expect(`${en} ${de}`).not.toMatch(/missed|failed|forgot|versäumt|vergessen|should have|müssen/i);
      expect(ruleText(rule).en).not.toBe(en);
    }
  });
});
