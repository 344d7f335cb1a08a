/**
 * What one rule says under, at and over its thresholds, through the whole decision. Figures are typed from the published
 * table of rules, versions 1 and 2.
 */
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { type RuleId, rulesOf } from '#core/decision/rules/table.ts';
import { type EngineVersion, engineVersions } from '#core/decision/settings.ts';
import { facts } from '../base-facts.ts';

interface Statement {
  /** Versions of the rules that it holds for. */
  readonly versions: readonly EngineVersion[];
  /** Does the rule fire, when these facts of a quiet joint are changed? */
  readonly cases: readonly (readonly [changed: Partial<Facts>, fires: boolean])[];
  /** What is left of the answers at the last case, where no other rule is more cautious. */
  readonly answers?: readonly [decision: string, largestStep: string | null, today: string, contact: string];
}

export const unknownUsual = { usualPain: null, usualPainTop: null } as const;
/** A person whose usual pain is high, on a day like every other. */
export const high = { usualPain: 5, usualPainTop: 5, painCeiling: 7 } as const;
export const calm = {
  painBefore: 4,
  painDuring: 4,
  painAfter: 4,
  painTwoHours: 4,
  painNextMorning: 4,
  morningPainMean7: 5,
} as const;

/** The guarantees of a rule, each by its title. */
export const describeRule = (rule: RuleId, statements: Readonly<Record<string, Statement>>): void => {
  describe(rule, () => {
    for (const [guarantee, { versions, cases, answers }] of Object.entries(statements)) {
      it.each(versions)(`version %i: ${guarantee}`, (version) => {
        const decided = (changed: Partial<Facts>) => decide(facts(changed), { 'engine-version': version });
        for (const [changed, fires] of cases) {
          const fired = decided(changed).reasons.map((reason) => reason.rule);
          expect({ changed, fires: fired.includes(rule) }).toEqual({ changed, fires });
        }
        const { decision, largestStep, today, contact } = decided(cases.at(-1)![0]);
        if (answers) expect([decision, largestStep, today, contact]).toEqual(answers);
      });
    }

    it('stands in the versions in which it can fire, and is tried under and at its threshold in each', () => {
      const isTried = (version: EngineVersion, wanted: boolean) =>
        Object.values(statements).some(
          ({ versions, cases }) => versions.includes(version) && cases.some(([, fires]) => fires === wanted),
        );
      const standsIn = engineVersions.filter((version) => rulesOf(version).some(({ id }) => id === rule));
      expect(engineVersions.filter((version) => isTried(version, true))).toEqual(standsIn);
      expect(engineVersions.filter((version) => isTried(version, false))).toEqual(standsIn);
    });
  });
};
