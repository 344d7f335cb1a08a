/** What holds for every proposal, over generated histories and doses of all three methods. */
import { describe, expect, it } from 'vitest';
import { decisions, steps } from '#core/decision/answers.ts';
import type { DoseProposal } from '#core/decision/dose/proposal.ts';
import { changesBetween, repetitionsAsked, shareOf } from '#core/decision/dose/volume.ts';
import { nextDose } from '#core/decision/next-dose.ts';
import { nextDoses } from '#core/decision/next-doses.ts';
import { evaluate } from '#core/decision/scope.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { dayFromNumber } from '#core/time/day.ts';
import { endOf, randomHistory } from '#simulation/raises/random-history.ts';
import { firstDay } from '#simulation/raises/random-prescriptions.ts';
import { type Seeded, seeded } from '#simulation/raises/seeded.ts';
import { instantOn, judgedMorning, knee, noonOf, record, version } from './small-record.ts';

const owned = [4, 5, 6, 7, 8, 9, 10, 11, 12.5, 15];

const randomDose = (random: Seeded): Dose => {
  const low = 5 + random.below(20);
  const common = {
    exerciseId: 'exercise-2',
    sets: 1 + random.below(4),
    restSeconds: 60,
    secondsPerRepetition: 4,
    sessionsPerWeek: 3,
  };
  const banded = { ...common, repetitions: { low, high: low + random.below(10) }, reserve: random.below(4) };
  const loadKg = random.pick(owned);
  const oneRepMaxKg = random.chance(0.3) ? null : loadKg * (2 + random.next() * 2);
  const which = random.below(3);
  if (which === 0) return { ...banded, method: 'low-load', side: 'left', loadKg, oneRepMaxKg };
  if (which === 1) {
    const effectiveLoadKg = random.chance(0.3) ? null : 10 + random.below(30);
    return { ...banded, method: 'variation', side: 'both', effectiveLoadKg, addedKg: 0 };
  }
  const scheme = Array.from({ length: common.sets }, () => 5 + random.below(26));
  const cuff = { kind: 'elastic-wrap', tightness: 5 } as const;
  const rest = {
    inflation: 'continuous',
    capSeconds: 600,
    supervised: true,
    limb: 'leg',
    side: 'left',
  } as const;
  return { ...common, ...rest, method: 'occlusion', scheme, loadKg, oneRepMaxKg, cuff };
};

const ladder = (random: Seeded) => {
  const step = (exerciseId: string, stepPercent: number) =>
    random.chance(0.2)
      ? null
      : {
          exerciseId,
          effectiveLoadKg: stepPercent > 0 ? 45 : 5,
          stepPercent: random.chance(0.3) ? null : stepPercent,
          equipmentOwned: random.chance(0.8),
        };
  return { harder: () => step('exercise-3', 5 + random.below(20)), easier: () => step('exercise-1', -10) };
};

/** Every variable the proposal raised; a fall of the repetition floor with a heavier load is not one. */
const raised = (from: Dose, to: Dose): readonly string[] => {
  const up: string[] = [];
  if (to.exerciseId === 'exercise-3') up.push('rung');
  if (to.sets > from.sets) up.push('sets');
  if (from.method !== 'variation' && to.method !== 'variation' && to.loadKg > from.loadKg) up.push('load');
  const perSet = (dose: Dose): number =>
    dose.method === 'occlusion' ? Math.max(...dose.scheme) : dose.repetitions.low;
  if (from.sets === to.sets && repetitionsAsked(to) > repetitionsAsked(from)) up.push('repetitions');
  else if (from.method !== 'occlusion' && perSet(to) > perSet(from)) up.push('repetitions');
  return up;
};

const isNotHeavier = (from: Dose, to: Dose): boolean => {
  const share = shareOf(to, from);
  return share === null ? to.sets <= from.sets : share <= 1;
};

const cuffOf = (dose: Dose): unknown => (dose.method === 'occlusion' ? dose.cuff : null);

const check = (present: Dose, proposal: DoseProposal): void => {
  const told = JSON.stringify({ present, proposal });
  expect([told, cuffOf(proposal.dose)]).toEqual([told, cuffOf(present)]);
  if (proposal.decision === 'hold' || proposal.decision === 'pause') expect(proposal.dose).toEqual(present);
  if (proposal.decision === 'ease-back') {
    expect([told, isNotHeavier(present, proposal.dose)]).toEqual([told, true]);
    expect([told, raised(present, proposal.dose)]).toEqual([told, []]);
  }
  if (proposal.kind === 'step') {
    expect([told, raised(present, proposal.dose)]).toEqual([told, [expect.any(String)]]);
    // Only repetitions of a banded dose may act without a signature.
    const mayAct =
      present.method !== 'occlusion' && proposal.changes.every(({ variable }) => variable === 'repetitions');
    if (!mayAct) expect([told, proposal.effect]).toEqual([told, 'awaits-signature']);
    const over = proposal.changes.some(
      (one) => one.variable === 'load' && one.percent !== null && one.percent > 10 + 1e-9,
    );
    if (over) expect([told, proposal.named.includes('over-ten-percent')]).toEqual([told, true]);
  }
  if (proposal.dose.method !== 'variation') {
    expect(owned.concat(present.method === 'variation' ? [] : [present.loadKg])).toContain(
      proposal.dose.loadKg,
    );
  }
  expect([told, isNotHeavier(proposal.dose, proposal.badDay)]).toEqual([told, true]);
};

describe('for every decision and every dose', () => {
  it('ease-back is never heavier, hold and pause never different, a step raises one variable, the cuff never moves', () => {
    const random = seeded(21);
    const kinds = new Map<string, number>();
    for (let count = 0; count < 6000; count++) {
      const dose = randomDose(random);
      const decision = random.pick(decisions);
      const signed = version({ dose, badDay: dose, signedAt: instantOn('2026-01-01', 12) });
      const proposal = nextDose({
        record: record({ prescriptions: [signed], ownedLoadsKg: owned }),
        item: {
          itemId: 'knee',
          version: signed,
          limitingJoints: [knee],
          decision,
          largestStep: decision === 'progress' ? random.pick(steps) : null,
          today: 'as-planned',
          contact: 'none',
          reasons: [],
        },
        at: noonOf(judgedMorning),
        flareDays: random.below(3),
        easeBacksBefore: random.below(3),
        tolerated: [],
        ladder: ladder(random),
      });
      check(dose, proposal);
      const kind = `${dose.method} ${proposal.decision} ${proposal.kind}`;
      kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
    }
    console.log(`proposals: ${JSON.stringify([...kinds].sort())}`);
    for (const method of ['low-load', 'variation', 'occlusion']) {
      expect(kinds.get(`${method} progress step`)).toBeGreaterThan(50);
      expect(kinds.get(`${method} ease-back ease-back`)).toBeGreaterThan(50);
    }
  });

  it('and over generated histories a return goes no further than a dose that was tolerated', () => {
    const random = seeded(22);
    let proposals = 0;
    for (let count = 0; count < 150; count++) {
      const of: PatientRecord = randomHistory(random, 30);
      const day = firstDay + 8 + random.below(22);
      const evaluation = evaluate(of, { instant: endOf(day), day: dayFromNumber(day) });
      for (const [itemId, proposal] of nextDoses(of, evaluation, () => ({
        ladder: ladder(random),
        easeBacksBefore: 0,
      }))) {
        const present = evaluation.items.find((item) => item.itemId === itemId)!.version.dose;
        proposals++;
        expect(proposal.changes).toEqual(changesBetween(present, proposal.dose));
        if (proposal.decision !== 'progress') expect(isNotHeavier(present, proposal.dose)).toBe(true);
      }
    }
    expect(proposals).toBeGreaterThan(200);
  });
});
