/** Every screening answer, alone and in pairs, by method, limb and side, against a second table. */
import { describe, expect, it } from 'vitest';
import { screeningItems } from '#core/screening/items.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { outcomesInput, screeningWith } from './answers.ts';
import { expectedFor, type Given } from './independent-expectation.ts';
import { type Letter, rows, withoutEffect } from './independent-screening-table.ts';

const words: Readonly<Record<Letter, string>> = {
  o: 'open',
  p: 'open-with-precautions',
  c: 'closed-until-cleared',
  x: 'closed',
};

/** Each item answered each way: alone, with each detail, with one limb or joint named, and both together. */
const variantsOf = (item: (typeof screeningItems)[number]): readonly Given[] => {
  const details = [undefined, ...(item.asks.details ?? []).map((detail) => [detail])];
  const places: readonly Partial<Given>[] = [
    {},
    ...(item.asks.limbs
      ? [
          { limbs: [{ limb: 'leg' as const, side: 'left' as const }] },
          { limbs: [{ limb: 'arm' as const, side: 'right' as const }] },
        ]
      : []),
    ...(item.asks.joints ? [{ joints: ['right-knee'] }, { joints: ['left-wrist', 'left-knee'] }] : []),
  ];
  return (['yes', 'not-known'] as const).flatMap((answer) =>
    details.flatMap((detail) =>
      places.map((place) => ({ item: item.id, answer, ...(detail ? { details: detail } : {}), ...place })),
    ),
  );
};

const variants: readonly Given[] = screeningItems.flatMap(variantsOf);

/** What is wrong with one outcome; null when it is as the second table says, with every reason told. */
const differs = (given: readonly Given[], outcome: MethodOutcome): string | null => {
  const expected = expectedFor(given, outcome.method === 'occlusion', outcome);
  const told = `${JSON.stringify(given)} ${outcome.method} ${outcome.side} ${outcome.limb}`;
  if (outcome.eligibility !== words[expected.letter])
    return `${told}: ${outcome.eligibility}, the second table says ${words[expected.letter]}`;
  const missing = expected.because.find(
    ({ letter, text }) =>
      !outcome.reasons.some((reason) => reason.eligibility === words[letter] && text.test(reason.text)),
  );
  if (missing) return `${told}: no reason like ${missing.text} that leaves it ${words[missing.letter]}`;
  const extra = outcome.reasons.find(
    (reason) =>
      !expected.because.some(
        ({ letter, text }) => reason.eligibility === words[letter] && text.test(reason.text),
      ),
  );
  return extra ? `${told}: a reason the second table does not have: ${extra.text}` : null;
};

const problemsWith = (given: readonly Given[]): readonly string[] =>
  methodOutcomes(outcomesInput({ screening: screeningWith(given) }))
    .map((outcome) => differs(given, outcome))
    .filter((text) => text !== null);

describe('screening answers against a table written apart', () => {
  it('the second table speaks of every item and every detail, and of none that does not exist', () => {
    const inTable = new Set([...rows.map((row) => row.item), ...withoutEffect]);
    expect([...inTable].sort()).toEqual(screeningItems.map((item) => item.id).sort());
    const details = screeningItems.flatMap((item) =>
      (item.asks.details ?? []).map((detail) => `${item.id} ${detail}`),
    );
    const named = new Set(rows.flatMap((row) => (row.detail ? [`${row.item} ${row.detail}`] : [])));
    // Kinds of heart condition that change no effect: all of them wait alike.
    const alike = ['stable-heart-failure', 'rhythm-problem', 'valve-disease', 'implanted-device'];
    const silent = [
      ...alike.map((detail) => `heart-condition ${detail}`),
      'head-pressure-or-eye retina-or-eye-operation',
      // Kinds of coronary disease, of stroke: alike too; a clearance takes an effect away and brings none.
      ...['stable-angina', 'heart-attack', 'stent-or-bypass', 'cleared-since'].map(
        (detail) => `heart-event ${detail}`,
      ),
      ...['stroke', 'tia', 'cleared-since'].map((detail) => `stroke-or-tia ${detail}`),
    ];
    expect(details.filter((detail) => !named.has(detail)).sort()).toEqual(silent.sort());
  });

  it('a plain no to everything leaves every method open on every limb', () => {
    expect(problemsWith([])).toEqual([]);
  });

  it('every answer alone: same opening and same reasons by method, limb and side', () => {
    expect(variants.flatMap((given) => problemsWith([given]))).toEqual([]);
    expect(variants.length).toBeGreaterThan(180);
  });

  it('every pair of answers: the more cautious opening, with the reasons of both', () => {
    const problems: string[] = [];
    let pairs = 0;
    for (const [place, first] of variants.entries()) {
      for (const second of variants.slice(place + 1)) {
        if (first.item === second.item) continue;
        pairs += 1;
        if (problems.length < 5) problems.push(...problemsWith([first, second]));
      }
    }
    expect(problems).toEqual([]);
    expect(pairs).toBeGreaterThan(15_000);
  }, 300_000);

  it('the same answers in the other order leave the same', () => {
    const [a, b]: readonly Given[] = [
      { item: 'diabetes', answer: 'yes', details: ['numbness'], limbs: [{ limb: 'leg', side: 'left' }] },
      { item: 'past-clot', answer: 'not-known' },
    ];
    expect([...problemsWith([a!, b!]), ...problemsWith([b!, a!])]).toEqual([]);
  });

  it('would notice an opening that is bolder than the second table', () => {
    const [outcome] = methodOutcomes(
      outcomesInput({ screening: screeningWith([{ item: 'swollen-calf', answer: 'yes' }]) }),
    );
    expect(differs([{ item: 'swollen-calf', answer: 'yes' }], { ...outcome!, eligibility: 'open' })).toMatch(
      /second table says closed-until-cleared/,
    );
  });
});
