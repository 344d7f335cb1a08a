/** What the rules page shows of the trial is what a run gives; after a change: `npm run simulate -- --keep`. */
import { describe, expect, it } from 'vitest';
import { engineDefaults } from '#core/decision/settings.ts';
import { type KeptRow, keptRowOf } from '#simulation/kept/kept-row.ts';
import { keptSettings, keptTrial, ownRule, tryOwnRule } from '#simulation/kept/kept-trial.ts';
import { secondModel } from '#simulation/second-model/model.ts';
import { armsWith, armsWithFrontier } from '#simulation/trial/arms.ts';
import { personTypes } from '#simulation/trial/person-types.ts';
import { firstModel, type PeopleModel, trialRows } from '#simulation/trial/trial.ts';

const models = { first: firstModel, second: secondModel };
const ids = ['first', 'second'] as const;
const settings = keptSettings(keptTrial.run);
const arm = (id: string) => armsWith(engineDefaults).find((one) => one.id === id)!;
const only = ({ people }: PeopleModel, type: string): PeopleModel => ({ types: [{ id: type }], people });

const ended = <T>(steps: Generator<void, T>): T => {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
};
const keptOf = (model: (typeof ids)[number], armId: string): readonly KeptRow[] =>
  keptTrial.rows[model].filter(([id]) => id === armId);

describe.each(ids)('the kept trial on the %s model', (model) => {
  it('has each arm and the oracle’s line, for each type and their mean: npm run simulate -- --keep', () => {
    const types = [...personTypes.map(({ id }) => id), 'all'];
    const wanted = armsWithFrontier(engineDefaults).flatMap(({ id }) => types.map((type) => `${id} ${type}`));
    expect(keptTrial.rows[model].map(([id, type]) => `${id} ${type}`)).toEqual(wanted);
  });

  it.each(['same-dose', 'fixed-rise', 'by-hand-may-cut'])('a fresh run of %s gives every row of it', (id) => {
    expect(trialRows(arm(id), settings, models[model]).map(keptRowOf)).toEqual(keptOf(model, id));
  });

  it.each(['version-2', 'oracle'])(
    'a fresh run of %s gives its row of the joint that answers early',
    (id) => {
      const [row] = trialRows(arm(id), settings, only(models[model], 'fragile')).map(keptRowOf);
      expect([row]).toEqual(keptOf(model, id).filter(([, type]) => type === 'fragile'));
    },
  );

  it('the own rule with the usual figures gives what the arm that may cut gives', () => {
    const figures = (rows: readonly KeptRow[]) => rows.map(([, ...rest]) => rest);
    expect(figures(ended(tryOwnRule(ownRule.usual, model)))).toEqual(
      figures(keptOf(model, 'by-hand-may-cut')),
    );
  });
});

describe('the own rule', () => {
  it('that never cuts and never raises is the same dose', () => {
    const rule = { ...ownRule.usual, badAnswersForCut: 0, weeklyRisePercent: 0 };
    const [first] = ended(tryOwnRule(rule, 'first')).filter(([, type]) => type === 'all');
    const [same] = keptOf('first', 'same-dose').filter(([, type]) => type === 'all');
    expect([first![2], first![3], first![6]]).toEqual([same![2], same![3], same![6]]);
  });

  it('that is bolder ends at more than one that is timid', () => {
    const last = (weeklyRisePercent: number) =>
      ended(tryOwnRule({ ...ownRule.usual, weeklyRisePercent }, 'first')).at(-1)![6];
    expect(last(15)).toBeGreaterThan(last(2));
  });
});

describe('the oracle’s line', () => {
  it.each(ids)('goes toward more days by load on the %s model', (model) => {
    const line = keptTrial.frontier.map((id) => keptOf(model, id).find(([, type]) => type === 'all')!);
    const byLoad = line.map((row) => row[4]);
    expect(byLoad).toEqual([...byLoad].sort((a, b) => a - b));
    expect(line.at(-1)![3]).toBeGreaterThan(line[0]![3]);
  });
});
