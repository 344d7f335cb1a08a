/**
 * Nothing a patient can report worse makes an answer bolder: shown by trying all there is, not by drawing. A rule
 * reads few facts, and the answer is the most cautious of what the rules leave; so it is enough that wherever
 * a rule leaves less before a raise than after it, a rule that reads no other facts leaves as little after it.
 * Thresholds are those of the clinic's choices as they are delivered, and as "version 3" sets them;
 * other choices are drawn (`raises.test.ts`, `npm run check-monotonic`).
 */
import { describe, expect, it } from 'vitest';
import { contactRank, decisionRank, stepRank, todayRank } from '#core/decision/decide.ts';
import { type Facts, redFlags } from '#core/decision/facts/facts.ts';
import type { Derived, Effect } from '#core/decision/rules/rule.ts';
import { type OrderedRule, rulesOf } from '#core/decision/rules/table.ts';
import {
  type EngineSettingValues,
  engineDefaults,
  engineVersionOf,
  engineVersions,
} from '#core/decision/settings.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import { effusions, swellings } from '#core/record/record.ts';
import { baseFacts } from '../base-facts.ts';
import { levels } from './fact-levels.ts';

/** A rule reads a fact or the highest pain; usual pain and its top are read through facts. */
type Read = keyof Facts | 'peak';
type Point = ReadonlyMap<Read, unknown>;

const peaks = [null, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const levelsOf = (name: Read): readonly unknown[] => (name === 'peak' ? peaks : levels[name]);

const numbers = (list: readonly unknown[]): readonly number[] =>
  list.filter((one) => typeof one === 'number');
const steps = (order: readonly unknown[]) =>
  order.slice(1).map((worse, place) => [order[place], worse] as const);

/** Each single step for the worse of what a patient can report or a diary can add up to. */
const raisesOf = (name: Read): readonly (readonly [unknown, unknown])[] => {
  switch (name) {
    case 'peak':
    case 'painBefore':
    case 'painDuring':
    case 'painAfter':
    case 'painTwoHours':
    case 'painNextMorning':
    case 'painLaterMorning':
    case 'morningPainMean7':
    case 'stiffnessMinutes':
    case 'effusionRun':
    case 'flareDays':
    case 'otherJointsFlared':
    case 'morningsOverTop':
    case 'fatigueRise':
    case 'usualPainRise':
      return steps(numbers(levelsOf(name)));
    case 'previousMorningOverTop':
    case 'previousPeakEight':
    case 'twoOverBefore':
    case 'usualPainProvisional':
    case 'symptomSignal':
    case 'gaveWay':
      return [[false, true]];
    case 'swelling':
      return steps(swellings);
    case 'effusion':
      return steps(effusions);
    case 'redFlags':
      return levels.redFlags.flatMap((before) =>
        redFlags.map((flag) => [before, [...(before ?? []), flag]] as const),
      );
    case 'stopReason':
      return levels.stopReason
        .filter((one) => one !== 'joint-pain')
        .map((before) => [before, 'joint-pain'] as const);
    default:
      return [];
  }
};

type Chosen = EngineSettingValues;

/** Each version of the table, and the choices that are called version 3 on that of version 2. */
const tables = [
  ...engineVersions.map((version) => [version, { ...engineDefaults, 'engine-version': version }] as const),
  [3, { ...engineDefaults, ...version3 }] as const,
];

/** The facts of a point, and the note of every one that is read. */
const watched = (point: Point, seen: Set<Read>) => {
  const facts = new Proxy(baseFacts, {
    get: (base, name: keyof Facts) => {
      seen.add(name);
      return point.has(name) ? point.get(name) : base[name];
    },
  });
  const derived: Derived = {
    get peak() {
      seen.add('peak');
      return (point.has('peak') ? point.get('peak') : 2) as number | null;
    },
    get usual() {
      return facts.usualPain ?? 0;
    },
    get top() {
      return facts.usualPain === null ? 0 : (facts.usualPainTop ?? facts.usualPain);
    },
  };
  return { facts, derived };
};

/** What a rule leaves at a point; nothing said = everything left. */
const leaves = (rule: OrderedRule, chosen: Chosen, point: Point, seen = new Set<Read>()): Effect => {
  const { facts, derived } = watched(point, seen);
  if (!rule.condition(facts, derived, chosen)) return {};
  return rule.effectFor ? rule.effectFor(facts, derived, chosen) : rule.effect;
};

/** These look in many answers at once, each only for being missing, and a raise leaves missing what is missing. */
const onlyWhetherMissing = new Set(['M1', 'M1r']);

const triedOf = (rule: OrderedRule, name: Read): readonly unknown[] => {
  const all = levelsOf(name);
  if (!onlyWhetherMissing.has(rule.id) || all.length < 4) return all;
  const known = all.filter((one) => one !== null && one !== 'not-applicable');
  return [...all.filter((one) => one === null || one === 'not-applicable'), known[0]];
};

const pointsOver = function* (rule: OrderedRule, names: readonly Read[]): Generator<Point> {
  const [name, ...others] = names;
  if (name === undefined) {
    yield new Map();
    return;
  }
  for (const point of pointsOver(rule, others))
    for (const level of triedOf(rule, name)) yield new Map(point).set(name, level);
};

/** Found by trying: a fact that is read only where another stands high is met when that one is tried. */
const readsOf = (rule: OrderedRule, chosen: Chosen): readonly Read[] => {
  const seen = new Set<Read>();
  for (let before = -1; before !== seen.size; ) {
    before = seen.size;
    for (const point of pointsOver(rule, [...seen])) leaves(rule, chosen, point, seen);
  }
  return [...seen];
};

const boldest = { decision: 3, largestStep: 9, today: 9, contact: 9 };
const ranksOf = ({ decision, largestStep, today, contact }: Effect) => ({
  decision: decision === undefined ? boldest.decision : decisionRank[decision],
  largestStep: largestStep === undefined ? boldest.largestStep : stepRank[largestStep],
  today: today === undefined ? boldest.today : todayRank[today],
  contact: contact === undefined ? boldest.contact : contactRank[contact],
});
type Ranks = ReturnType<typeof ranksOf>;

const isBolder = (after: Ranks, before: Ranks): boolean =>
  (Object.keys(boldest) as (keyof Ranks)[]).some((answer) => after[answer] > before[answer]);

const lowest = (all: readonly Ranks[]): Ranks => ({
  decision: Math.min(...all.map((one) => one.decision)),
  largestStep: Math.min(...all.map((one) => one.largestStep)),
  today: Math.min(...all.map((one) => one.today)),
  contact: Math.min(...all.map((one) => one.contact)),
});

describe.each(tables)('version %i of the table', (version, chosen) => {
  const rules = rulesOf(engineVersionOf(chosen));
  const reads = new Map(rules.map((rule) => [rule.id, readsOf(rule, chosen)]));

  it.each(rules.map((rule) => [rule.id, rule] as const))(
    'after any single step for the worse of what %s reads, nothing is bolder',
    (id, rule) => {
      const own = reads.get(id)!;
      const beside = rules.filter((one) => reads.get(one.id)!.every((name) => own.includes(name)));
      const raises = own.flatMap((name) => raisesOf(name).map((step) => [name, ...step] as const));
      const found: string[] = [];
      let tried = 0;
      for (const point of pointsOver(rule, own)) {
        const before = ranksOf(leaves(rule, chosen, point));
        for (const [name, from, to] of raises) {
          if (JSON.stringify(point.get(name)) !== JSON.stringify(from)) continue;
          tried += 1;
          const raised = new Map(point).set(name, to);
          if (!isBolder(ranksOf(leaves(rule, chosen, raised)), before)) continue;
          const together = lowest(beside.map((one) => ranksOf(leaves(one, chosen, raised))));
          if (isBolder(together, before))
            found.push(`${name} ${from} → ${to} at ${JSON.stringify([...point])}`);
        }
      }
      expect(found).toEqual([]);
      expect(tried > 0 || raises.length === 0).toBe(true);
    },
  );

  it('reads every fact of which a raise is tried, by some rule', () => {
    const read = new Set([...reads.values()].flat());
    const raised = (Object.keys(levels) as Read[]).filter((name) => raisesOf(name).length > 0);
    // Pain before, during and after speak through the highest of them as well.
    expect(raised.filter((name) => !read.has(name))).toEqual(
      version === 1
        ? ['painLaterMorning', 'twoOverBefore', 'morningsOverTop', 'usualPainProvisional', 'usualPainRise']
        : ['previousMorningOverTop'],
    );
  });
});
