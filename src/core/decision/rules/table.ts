/** The table: every rule in its published order, which is also the order of the reasons. */

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

/** Changes whenever a rule's condition, effect or published figure does; stored with each decision. */
export const engineVersion = '1';

export interface OrderedRule extends Rule {
  /** Place in the table, from 1. */
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

export const engineRules: readonly OrderedRule[] = listed.map((rule: Rule, place) => ({
  ...rule,
  order: place + 1,
}));

export const ruleById: ReadonlyMap<string, OrderedRule> = new Map(engineRules.map((rule) => [rule.id, rule]));
