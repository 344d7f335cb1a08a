/** The arm counts ease-backs in a row as the product does: by session, those in a flare only in version 1. */
import { describe, expect, it } from 'vitest';
import type { DecisionWord } from '#core/decision/answers.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { easeBackRun } from '#simulation/trial/arms/ease-back-run.ts';

type Row = readonly [session: string, word: DecisionWord, flareDays?: number];

const runOf = (version: number, rows: readonly Row[], judged: string): number => {
  const run = easeBackRun({ ...engineDefaults, 'engine-version': version });
  for (const [session, word, flareDays] of rows) run.note(session, word, flareDays ?? 0);
  return run.before(judged);
};

describe('ease-backs in a row', () => {
  it('are those directly before the session judged, which does not count itself', () => {
    expect(runOf(2, [], 'a')).toBe(0);
    expect(runOf(2, [['a', 'ease-back']], 'a')).toBe(0);
    expect(runOf(2, [['a', 'ease-back']], 'b')).toBe(1);
    expect(
      runOf(
        2,
        [
          ['a', 'ease-back'],
          ['b', 'ease-back'],
        ],
        'c',
      ),
    ).toBe(2);
    expect(
      runOf(
        2,
        [
          ['a', 'ease-back'],
          ['b', 'hold'],
        ],
        'c',
      ),
    ).toBe(0);
  });

  it('count a session looked at twice once, by its last word', () => {
    const twice: readonly Row[] = [
      ['a', 'ease-back'],
      ['b', 'ease-back'],
      ['b', 'ease-back'],
    ];
    expect(runOf(2, twice, 'c')).toBe(2);
    expect(runOf(2, [...twice, ['b', 'hold']], 'c')).toBe(0);
  });

  it('pass over those of a reported flare since version 2, which neither count nor end the row', () => {
    const rows: readonly Row[] = [
      ['a', 'ease-back'],
      ['b', 'ease-back', 1],
      ['c', 'ease-back'],
    ];
    expect(runOf(1, rows, 'd')).toBe(3);
    expect(runOf(2, rows, 'd')).toBe(2);
    expect(runOf(2, [['a', 'hold', 1]], 'b')).toBe(0);
  });
});
