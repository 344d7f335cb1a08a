/** The table: every rule in its published order, which is also the order of the reasons. */

import { type EngineVersion, engineVersions, newestVersion } from '../settings.ts';
import { a1 } from './adherence/a1.ts';
import { a2 } from './adherence/a2.ts';
import { b0 } from './baseline/b0.ts';
import { b0r } from './baseline/b0r.ts';
import { b1 } from './baseline/b1.ts';
import { b2 } from './baseline/b2.ts';
import { b3 } from './baseline/b3.ts';
import { c1 } from './completion/c1.ts';
import { c2 } from './completion/c2.ts';
import { c3 } from './completion/c3.ts';
import { c4 } from './completion/c4.ts';
import { d1 } from './disturbance/d1.ts';
import { d2 } from './disturbance/d2.ts';
import { d3 } from './disturbance/d3.ts';
import { s1 } from './effusion/s1.ts';
import { s2 } from './effusion/s2.ts';
import { s2f } from './effusion/s2f.ts';
import { s3 } from './effusion/s3.ts';
import { f1 } from './flare/f1.ts';
import { f1i } from './flare/f1i.ts';
import { f2 } from './flare/f2.ts';
import { d4 } from './giving-way/d4.ts';
import { m1 } from './missing-answers/m1.ts';
import { m1r } from './missing-answers/m1r.ts';
import { p1 } from './pain/p1.ts';
import { p1x } from './pain/p1x.ts';
import { p2 } from './pain/p2.ts';
import { p3 } from './pain/p3.ts';
import { p3b } from './pain/p3b.ts';
import { p4 } from './pain/p4.ts';
import { p5 } from './pain/p5.ts';
import { p5h } from './pain/p5h.ts';
import { p5r } from './pain/p5r.ts';
import { p6 } from './pain/p6.ts';
import { p6h } from './pain/p6h.ts';
import { p7 } from './pain/p7.ts';
import { p7h } from './pain/p7h.ts';
import { r1 } from './red-flags/r1.ts';
import type { Rule, RuleForm } from './rule.ts';
import { x1 } from './signal/x1.ts';
import { t1 } from './stiffness/t1.ts';
import { t2 } from './stiffness/t2.ts';
import { w1s } from './swelling/w1s.ts';
import { w2 } from './swelling/w2.ts';
import { w3 } from './swelling/w3.ts';
import { w1 } from './whole-body/w1.ts';

/** A rule as one version of the table has it. */
export interface OrderedRule extends Omit<Rule, 'since' | 'upTo'> {
  /** Place in the newest table, from 1. */
  readonly order: number;
}

/** A new rule is an import and a name here; its place is that of its reason. */
const listed = [
  r1,
  p1,
  p1x,
  p2,
  p3,
  p3b,
  p4,
  p5,
  p5h,
  p5r,
  p6,
  p6h,
  p7,
  p7h,
  b0,
  b0r,
  b1,
  b2,
  b3,
  w3,
  w2,
  w1s,
  s1,
  s2,
  s2f,
  s3,
  t1,
  t2,
  f1,
  f1i,
  f2,
  w1,
  c1,
  c2,
  c3,
  c4,
  a1,
  a2,
  m1,
  m1r,
  x1,
  d1,
  d2,
  d3,
  d4,
] as const;

export type RuleId = (typeof listed)[number]['id'];

/** What the rule said otherwise in a version: the nearest change that came after it. */
const changesAfter = ({ upTo = {} }: Rule, version: EngineVersion): Partial<RuleForm> => {
  const until = engineVersions.find((one) => one >= version && upTo[one] !== undefined);
  return until === undefined ? {} : (upTo[until] ?? {});
};

const inVersion = (rule: Rule, version: EngineVersion, order: number): OrderedRule => {
  const { since: _since, upTo: _upTo, ...newest } = rule;
  const form = { ...newest, ...changesAfter(rule, version) };
  const { condition } = form;
  return {
    ...form,
    order,
    condition: form.isSilentWithoutUsual
      ? (facts, derived, settings) => facts.usualPain !== null && condition(facts, derived, settings)
      : condition,
  };
};

const tableOf = (version: EngineVersion): readonly OrderedRule[] =>
  listed.flatMap((rule: Rule, place) => (rule.since <= version ? [inVersion(rule, version, place + 1)] : []));

const tables: Readonly<Record<EngineVersion, readonly OrderedRule[]>> = { 1: tableOf(1), 2: tableOf(2) };

/** The rules of a version in the order of the table. Stored decisions keep the version they were made with. */
export const rulesOf = (version: EngineVersion): readonly OrderedRule[] => tables[version];

/** Every rule there is, in its newest form. */
export const ruleById: ReadonlyMap<string, OrderedRule> = new Map(
  rulesOf(newestVersion).map((rule) => [rule.id, rule]),
);
