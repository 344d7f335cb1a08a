/** A proposed dose inside a clinician's limits: what it keeps, what it becomes, and where it ends. */
import { describe, expect, it } from 'vitest';
import { boundByLimits, keptFromClosed } from '#core/decision/dose/bound.ts';
import { limitsInForce } from '#core/decision/dose/limits.ts';
import type { Candidate } from '#core/decision/dose/proposal.ts';
import type { Limit } from '#core/record/limit.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { judgedMorning, knee, kneeDose } from '../small-record.ts';

const limit = (changed: Partial<Limit> = {}): Limit => ({
  joint: knee,
  kind: 'load-limit',
  limitKg: 9,
  from: addDays(judgedMorning, -9),
  to: null,
  author: 'surgeon',
  ...changed,
});
const inForce = (...limits: readonly Limit[]) => limitsInForce(limits, [knee], dayNumber(judgedMorning));
const bound = (candidate: Candidate, limitKg: number, owned = [8, 9, 10]) =>
  boundByLimits(candidate, kneeDose, inForce(limit({ limitKg })), owned);
const heavier = { ...kneeDose, loadKg: 11 };

describe('a dose over a limit', () => {
  it('comes down to it and keeps its words and what it put on the worklist', () => {
    const step: Candidate = {
      kind: 'step',
      dose: heavier,
      named: ['over-ten-percent'],
      worklist: ['two-ease-backs'],
    };
    expect(bound(step, 9)).toEqual({
      kind: 'ease-back',
      dose: { ...heavier, loadKg: 9 },
      named: ['over-ten-percent', 'bound-by-limit'],
      worklist: ['two-ease-backs'],
    });
  });

  it('that had no words of its own is named as bound, and a stop stays a stop', () => {
    const kinds = (['same', 'stop'] as const).map((kind) => bound({ kind, dose: kneeDose }, 9));
    expect(kinds).toMatchObject([
      { kind: 'ease-back', dose: { loadKg: 9 }, named: ['bound-by-limit'], worklist: [] },
      { kind: 'stop', dose: { loadKg: 9 }, named: ['bound-by-limit'], worklist: [] },
    ]);
  });

  it('is stopped where no load owned lies within, beside what was on the worklist', () => {
    expect(bound({ kind: 'step', dose: heavier, worklist: ['two-ease-backs'] }, 7)).toMatchObject({
      kind: 'stop',
      dose: kneeDose,
      worklist: ['two-ease-backs', 'no-dose-within-limit'],
    });
  });

  it('within it stays as it was', () => {
    const step: Candidate = { kind: 'step', dose: heavier };
    expect(bound(step, 11)).toBe(step);
  });
});

describe('another exercise', () => {
  const other = { ...kneeDose, exerciseId: 'knee-extension-seated-one-kilo' };
  const kept = (candidate: Candidate, ...limits: readonly Limit[]) =>
    keptFromClosed(candidate, kneeDose, limits, judgedMorning);

  it('that a limit closes is not gone to: a step stays, a cut stops', () => {
    const light = limit({ limitKg: 1 });
    expect(kept({ kind: 'step', dose: other }, light)).toMatchObject({
      kind: 'same',
      dose: kneeDose,
      worklist: ['limit-stands-in-the-way'],
    });
    expect(kept({ kind: 'ease-back', dose: other }, light)).toMatchObject({
      kind: 'stop',
      dose: kneeDose,
      worklist: ['no-dose-within-limit'],
    });
  });

  it('that no limit closes is gone to, and the same exercise is looked at elsewhere', () => {
    const [open, same] = [
      { kind: 'step', dose: other },
      { kind: 'step', dose: kneeDose },
    ] as const;
    expect(kept(open)).toBe(open);
    expect(kept(same, limit({ limitKg: 1 }))).toBe(same);
  });
});
