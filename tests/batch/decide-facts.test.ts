/** The facts that version 2 brought, as the calculation takes them: every combination decides, none is refused. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '#api/inputs/evaluate.ts';
import { calculationById } from '#core/calculations/registry.ts';
import { factsSinceVersion2 } from '#core/decision/facts/facts.ts';
import { facts } from '#tests/core/decision/base-facts.ts';

const levels = {
  painLaterMorning: [undefined, null, 'not-applicable', 0, 10],
  twoOverBefore: [undefined, false, true],
  morningsOverTop: [undefined, 0, 4, 5],
  usualPainProvisional: [undefined, false, true],
  usualPainRise: [undefined, null, -10, 2, 10],
  painNextMorning: [null, 1],
  usualPain: [null, 1],
  engineVersion: [undefined, 1, 2],
};

const combinations = Object.entries(levels).reduce<readonly Readonly<Record<string, unknown>>[]>(
  (all, [name, values]) => all.flatMap((one) => values.map((value) => ({ ...one, [name]: value }))),
  [{}],
);

/** Left out where it is undefined, as in a line that does not name it. */
const named = (values: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

const older = Object.fromEntries(Object.entries(facts({})).filter(([name]) => !(name in factsSinceVersion2)));

const row = calculationById('decide')!;
const decided = ({ engineVersion, ...changed }: Readonly<Record<string, unknown>>) =>
  evaluate(
    row,
    named({ engineVersion, facts: { ...older, ...named(changed), usualPainTop: changed.usualPain } }),
  );

describe('the facts of version 2', () => {
  it('are never refused, in any combination, named or left out', () => {
    const refused = combinations.filter((values) => !decided(values).ok);
    expect(combinations.length).toBe(5 * 3 * 4 * 3 * 5 * 2 * 2 * 3);
    expect(refused.slice(0, 3)).toEqual([]);
  });
});
