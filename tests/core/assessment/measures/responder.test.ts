/** OMERACT-OARSI responder, figures from memory: 50 % and 20 points of pain or function, or 20 % and 10 points of two of three. */
import { expect, it } from 'vitest';
import { responderRow } from '#core/assessment/change/responder.ts';
import { resultOf } from '#tests/core/assessment/strength/result-of.ts';

type Pair = readonly [number, number] | null;

const responder = (pain: Pair, difficulty: Pair, global: Pair) =>
  resultOf(
    responderRow.calculate({
      painBefore: pain![0],
      painAfter: pain![1],
      difficultyBefore: difficulty?.[0] ?? null,
      difficultyAfter: difficulty?.[1] ?? null,
      globalBefore: global![0],
      globalAfter: global![1],
    }),
  ).responder;

const same = [50, 50] as const;

it.each([
  ['pain by exactly half and 20 points', [40, 20], same, same, 'yes'],
  ['pain by half and under 20 points', [38, 19], same, same, 'no'],
  ['pain by under half', [60, 31], same, same, 'no'],
  ['function by half', same, [60, 30], same, 'yes'],
  ['two of three by exactly a fifth and 10 points', [50, 40], same, [50, 40], 'yes'],
  ['two of three by under a fifth', [60, 49], same, [50, 41], 'no'],
  ['one of three', [50, 40], same, same, 'no'],
  ['function not rated, one of two', [50, 40], null, same, 'not-known'],
  ['function not rated, both others', [50, 40], null, [50, 40], 'yes'],
  ['pain that was none before', [0, 0], same, same, 'no'],
] as const)('%s: %j %j %j is %s', (_, pain, difficulty, global, answer) => {
  expect(responder(pain, difficulty, global)).toBe(answer);
});
