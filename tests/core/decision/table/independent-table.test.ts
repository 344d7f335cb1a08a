import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { type Second, secondStatement } from '#core/decision/independent/independent-table.ts';
import { secondStatement2, statedRules } from '#core/decision/independent/independent-table-2.ts';
import { secondStatement3 } from '#core/decision/independent/independent-table-3.ts';
import { requiredAnswers } from '#core/decision/rules/missing-answers/m1.ts';
import { engineVersions } from '#core/decision/settings.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { randomFacts } from '#simulation/raises/random-facts.ts';
import { seeded } from '#simulation/raises/seeded.ts';
import { baseFacts, facts } from '../base-facts.ts';
import { factNames, factsOfRule, factsOfRule2, levels } from './fact-levels.ts';

interface Version {
  readonly version: 1 | 2 | 3;
  readonly settings: SettingValues;
  readonly second: (given: Facts) => Second;
  /** Rules of which the full product of the facts is gone through. */
  readonly rules: Readonly<Record<string, readonly (keyof Facts)[]>>;
}

const versions: readonly Version[] = [
  { version: 1, settings: { 'engine-version': 1 }, second: secondStatement, rules: factsOfRule },
  {
    version: 2,
    settings: { 'engine-version': 2 },
    second: secondStatement2,
    rules: { ...factsOfRule, ...factsOfRule2 },
  },
  {
    version: 3,
    settings: version3,
    second: secondStatement3,
    rules: { P3: [...factsOfRule.P3!, 'repetitionsDonePercent'] },
  },
];

/**
 * null when the two statements agree on the four answers and on every rule that fired, in order. A rule that came to a
 * version after its second statement is stated in its own test; where it speaks, the stated rules are compared alone.
 */
const disagreementOf =
  ({ settings, second: statement }: Version) =>
  (given: Facts): string | null => {
    const first = decide(given, settings);
    const second = statement(given);
    const fired = first.reasons.map((one) => one.rule);
    const stated = fired.filter((rule) => statedRules.has(rule));
    const rules = stated.join(' ');
    const agrees =
      rules === second.rules &&
      (stated.length < fired.length ||
        (first.decision === second.decision &&
          first.largestStep === second.largestStep &&
          first.today === second.today &&
          first.contact === second.contact));
    return agrees ? null : JSON.stringify({ given, first: { ...first, reasons: rules }, second });
  };

const starts: readonly Facts[] = [
  baseFacts,
  facts({ usualPain: 4, usualPainTop: 6, painCeiling: 7, usualStiffnessMinutes: 45, sessionsOnTarget: 1 }),
];

it('every version of the table is stated a second time', () => {
  // Version 3 is the table of version 2 with other choices.
  expect(versions.map(({ version }) => version)).toEqual([...engineVersions, 3]);
});

describe.each(versions)(
  'a second statement of version $version of the table agrees with the engine',
  (of) => {
    const disagreement = disagreementOf(of);
    const { settings } = of;

    it('over every pair of facts at all their levels', () => {
      const found: string[] = [];
      let compared = 0;
      // Each version from one of the starts; the full products below go through both.
      const start = starts[(of.version - 1) % starts.length]!;
      for (let first = 0; first < factNames.length; first++) {
        for (let second = first + 1; second < factNames.length; second++) {
          const [a, b] = [factNames[first]!, factNames[second]!];
          for (const one of levels[a]) {
            for (const other of levels[b]) {
              const wrong = disagreement({ ...start, [a]: one, [b]: other });
              compared++;
              if (wrong && found.length < 5) found.push(wrong);
            }
          }
        }
      }
      console.log(`pairs of facts compared: ${compared}`);
      expect(found).toEqual([]);
      expect(compared).toBeGreaterThan(40_000);
    });

    for (const [rule, names] of Object.entries(of.rules)) {
      it(`over the full product of the facts of ${rule}`, () => {
        const found: string[] = [];
        const visit = (given: Facts, place: number): void => {
          const name = names[place];
          if (name === undefined) {
            const wrong = disagreement(given);
            if (wrong && found.length < 5) found.push(wrong);
            return;
          }
          for (const level of levels[name]) visit({ ...given, [name]: level }, place + 1);
        };
        for (const start of starts) visit(start, 0);
        expect(found).toEqual([]);
      });
    }

    it('over every set of required answers given or missing', () => {
      for (let mask = 0; mask < 2 ** requiredAnswers.length; mask++) {
        const missing = requiredAnswers.filter((_, place) => (mask >> place) % 2 === 1);
        const given = facts(Object.fromEntries(missing.map((name) => [name, null])));
        expect(disagreement(given)).toBeNull();
        expect(decide(given, settings).decision === 'progress').toBe(missing.length === 0);
      }
    });

    it('over 40,000 random facts', () => {
      const random = seeded(20260131);
      const found: string[] = [];
      const seen = new Map<string, number>();
      for (let count = 0; count < 40_000; count++) {
        const given = randomFacts(random);
        const wrong = disagreement(given);
        if (wrong && found.length < 5) found.push(wrong);
        const { decision } = decide(given, settings);
        seen.set(decision, (seen.get(decision) ?? 0) + 1);
      }
      console.log(`random facts by decision: ${JSON.stringify([...seen])}`);
      expect(found).toEqual([]);
      expect([...seen.keys()].sort()).toEqual(['ease-back', 'hold', 'pause', 'progress']);
    });
  },
);
