/** The trial on invented people: repeatable, the same days for every arm, and the oracle ahead of them. */
import { beforeAll, describe, expect, it } from 'vitest';
import { engineDefaults } from '#core/decision/settings.ts';
import { byHandMayCut } from '#simulation/trial/arms/by-hand.ts';
import { fixedRise, sameDose } from '#simulation/trial/arms/unattended.ts';
import { armsWith } from '#simulation/trial/arms.ts';
import { personTypes } from '#simulation/trial/person-types.ts';
import { peopleOf, type TrialRow, type TrialSettings, trialRows } from '#simulation/trial/trial.ts';

const settings: TrialSettings = { weeks: [12], people: 2, seed: 20_260_131, law: 'first', slope: 1 };

describe('the trial', () => {
  let rows: readonly TrialRow[] = [];
  beforeAll(() => {
    rows = armsWith(engineDefaults).flatMap((arm) => trialRows(arm, settings));
  });

  const meanOf = (arm: string) => rows.find((row) => row.arm === arm && row.type === 'all')!.outcomes;

  it('no arm with at most the bad days of the oracle gains more strength than it', () => {
    const oracle = meanOf('oracle');
    const others = rows.filter((row) => row.type === 'all' && row.arm !== 'oracle');
    expect(others).toHaveLength(7);
    const ahead = others.filter(
      ({ outcomes }) =>
        outcomes.badDays <= oracle.badDays && outcomes.strengthPercent > oracle.strengthPercent,
    );
    expect(ahead.map(({ arm }) => arm)).toEqual([]);
  });

  it('the oracle gains more than the same dose at fewer bad days', () => {
    expect(meanOf('oracle').strengthPercent).toBeGreaterThan(meanOf('same-dose').strengthPercent);
    expect(meanOf('oracle').badDays).toBeLessThan(meanOf('same-dose').badDays);
  });

  it('on flare days an engine says progress in under 2 % for every type that flared', () => {
    const flared = rows.filter(({ arm, outcomes }) => arm.startsWith('version-') && outcomes.flareDays > 0);
    expect(flared.map(({ type }) => type)).toEqual(expect.arrayContaining(['flaring', 'inflammatory']));
    for (const { type, outcomes } of flared) {
      expect([type, outcomes.decisionsInFlare > 0]).toEqual([type, true]);
      expect([type, outcomes.progressInFlare / outcomes.decisionsInFlare < 0.02]).toEqual([type, true]);
    }
  });

  it('the mean of the types stands under "all"', () => {
    const types = rows.filter((row) => row.arm === 'fixed-rise' && row.type !== 'all');
    const mean = types.reduce((sum, row) => sum + row.outcomes.badDays, 0) / types.length;
    expect(types).toHaveLength(9);
    expect(meanOf('fixed-rise').badDays).toBeCloseTo(mean, 10);
  });
});

describe('invented people', () => {
  it('of the same seed are the same, byte for byte; of another they differ', () => {
    const told = (seed: number): string =>
      JSON.stringify(trialRows(byHandMayCut, { ...settings, people: 2, seed }));
    expect(told(3)).toBe(told(3));
    expect(told(3)).not.toBe(told(4));
  });

  it('stay who they are when more are drawn or they are followed for longer', () => {
    for (const type of personTypes) {
      const [first] = peopleOf(type, { people: 1, weeks: [2], seed: 9 });
      const [again] = peopleOf(type, { people: 3, weeks: [4], seed: 9 });
      expect({ ...again!, days: again!.days.slice(0, 14) }).toEqual(first);
    }
  });

  it('after some weeks are where a trial of that length leaves them', () => {
    const short = trialRows(fixedRise, { ...settings, people: 2, weeks: [3] });
    const long = trialRows(fixedRise, { ...settings, people: 2, weeks: [3, 6] });
    expect(long.filter(({ weeks }) => weeks === 3)).toEqual(short);
  });

  it('hurt more from the same dose the steeper their answer to load, and not at all from load at slope 0', () => {
    const caused = [0, 0.5, 1, 1.5].map(
      (slope) => trialRows(sameDose, { ...settings, people: 10, slope }).at(-1)!.outcomes.loadCausedBadDays,
    );
    expect(caused[0]).toBe(0);
    expect(caused).toEqual([...caused].sort((a, b) => a - b));
    expect(new Set(caused).size).toBe(4);
  });
});
