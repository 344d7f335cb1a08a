/** The trial as last kept, and a rule of a clinic's own run on the same invented people. */
import { type EngineSettingValues, engineDefaults, engineVersionOf } from '#core/decision/settings.ts';
import { secondModel } from '../second-model/model.ts';
import { type ByHandRule, byHand, byHandFields, usualByHand } from '../trial/arms/by-hand.ts';
import { engineArms } from '../trial/arms/engine.ts';
import { frontier } from '../trial/arms/oracle.ts';
import { armsWithFrontier } from '../trial/arms.ts';
import { firstModel, type PeopleModel, type TrialSettings, trialSteps } from '../trial/trial.ts';
import { firstRows } from './first-rows.ts';
import { type KeptRow, type KeptRun, keptRowOf } from './kept-row.ts';
import { keptRun } from './kept-run.ts';
import { secondRows } from './second-rows.ts';

export const keptModels = ['first', 'second'] as const;
export type KeptModel = (typeof keptModels)[number];

const models: Readonly<Record<KeptModel, PeopleModel>> = { first: firstModel, second: secondModel };

export interface KeptTrial {
  readonly run: KeptRun;
  readonly rows: Readonly<Record<KeptModel, readonly KeptRow[]>>;
  readonly titles: ReadonlyMap<string, string>;
  /** Arms that see the joint, from the most careful on: points of one line. */
  readonly frontier: readonly string[];
}

export const keptTrial: KeptTrial = {
  run: keptRun,
  rows: { first: firstRows, second: secondRows },
  titles: new Map(armsWithFrontier(engineDefaults).map(({ id, title }) => [id, title])),
  frontier: frontier.map(({ id }) => id),
};

export const ownRule = { fields: byHandFields, usual: usualByHand };

/** The settings the kept rows were made with. */
export const keptSettings = ({ seed, people, weeks }: KeptRun): TrialSettings => ({
  seed,
  people,
  weeks: [weeks],
  law: 'first',
  slope: 1,
});

/** Stops after each person, so that a server can answer others in between. */
export function* tryOwnRule(rule: ByHandRule, model: KeptModel): Generator<void, readonly KeptRow[]> {
  const arm = byHand('own-rule', 'By hand, own figures', rule);
  const rows = yield* trialSteps(arm, keptSettings(keptRun), models[model]);
  return rows.map(keptRowOf);
}

function* engineRows(settings: EngineSettingValues, people: number): Generator<void, readonly KeptRow[]> {
  const arm = engineArms(settings)[engineVersionOf(settings) - 1]!;
  const rows = yield* trialSteps(arm, { ...keptSettings(keptRun), people }, firstModel);
  return rows.map(keptRowOf);
}

/** The engine under two lists of settings on the same people of the first model, so many of each type. Stops after each person. */
export function* trySettings(
  now: EngineSettingValues,
  tried: EngineSettingValues,
  people: number,
): Generator<void, { readonly now: readonly KeptRow[]; readonly tried: readonly KeptRow[] }> {
  return { now: yield* engineRows(now, people), tried: yield* engineRows(tried, people) };
}
