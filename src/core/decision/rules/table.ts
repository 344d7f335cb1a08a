/** The table: every rule in its published order, which is also the order of the reasons. */

import { type EngineVersion, newestVersion } from '../settings.ts';
import { adherenceRules } from './adherence.ts';
import { baselineRules } from './baseline.ts';
import { completionRules } from './completion.ts';
import { disturbanceRules } from './disturbance.ts';
import { effusionRules } from './effusion.ts';
import { flareRules } from './flare.ts';
import { missingRules } from './missing.ts';
import { painRules } from './pain.ts';
import { painLaterRules } from './pain-later.ts';
import { redFlagRules } from './red-flags.ts';
import type { Rule } from './rule.ts';
import { signalRules } from './signal.ts';
import { stiffnessRules } from './stiffness.ts';
import { swellingRules } from './swelling.ts';
import { wholeBodyRules } from './whole-body.ts';

/** A rule as one version of the table has it. */
export interface OrderedRule extends Omit<Rule, 'since' | 'silentWithoutUsualSince' | 'version1'> {
  /** Place in the newest table, from 1. */
  readonly order: number;
}

const listed = [
  ...redFlagRules,
  ...painRules,
  ...painLaterRules,
  ...baselineRules,
  ...swellingRules,
  ...effusionRules,
  ...stiffnessRules,
  ...flareRules,
  ...wholeBodyRules,
  ...completionRules,
  ...adherenceRules,
  ...missingRules,
  ...signalRules,
  ...disturbanceRules,
] as const;

export type RuleId = (typeof listed)[number]['id'];

const inVersion = (rule: Rule, version: EngineVersion, order: number): OrderedRule => {
  const { since: _since, silentWithoutUsualSince, version1, ...newest } = rule;
  const form = version === 1 ? { ...newest, ...version1 } : newest;
  const { condition } = form;
  const isSilent = silentWithoutUsualSince !== undefined && version >= silentWithoutUsualSince;
  return {
    ...form,
    order,
    condition: isSilent
      ? (facts, derived, settings) => facts.usualPain !== null && condition(facts, derived, settings)
      : condition,
  };
};

const tableOf = (version: EngineVersion): readonly OrderedRule[] =>
  listed.flatMap((rule: Rule, place) =>
    (rule.since ?? 1) <= version ? [inVersion(rule, version, place + 1)] : [],
  );

const tables: Readonly<Record<EngineVersion, readonly OrderedRule[]>> = { 1: tableOf(1), 2: tableOf(2) };

/** The rules of a version in the order of the table. Stored decisions keep the version they were made with. */
export const rulesOf = (version: EngineVersion): readonly OrderedRule[] => tables[version];

/** Every rule there is, in its newest form. */
export const ruleById: ReadonlyMap<string, OrderedRule> = new Map(
  rulesOf(newestVersion).map((rule) => [rule.id, rule]),
);
