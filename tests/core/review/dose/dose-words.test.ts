/** What the picture of a dose shows, in words: every step, every count, the corridor or why there is none. */
import { describe, expect, it } from 'vitest';
import { corridorOf, type DoseAnswers } from '#core/review/dose/corridor.ts';
import { byDoseInWords, corridorInWords, stepsInWords } from '#core/review/dose/dose-words.ts';
import { since, today } from '../builders.ts';

const at = (share: number, atUsual: number, overUsual = 0): DoseAnswers => ({
  share,
  dose: null,
  atUsual,
  overUsual,
});

const said = (...doses: readonly DoseAnswers[]) => corridorInWords(corridorOf(doses));

describe('the corridor in words', () => {
  it('names both ends with their counts', () => {
    expect(said(at(1.2, 7), at(1.3, 1, 2))).toBe(
      'Corridor from 1.20 (at usual 7 of 7), the highest at usual, to 1.30 (at usual 1 of 3), the lowest over it.',
    );
  });

  it.each([
    [[], 'No corridor: no session could be counted.'],
    [[at(1, 1)], 'No corridor: no dose was at usual twice, and more often than over it.'],
    [
      [at(1, 3)],
      'No corridor: highest at usual is 1.00 (at usual 3 of 3), and no dose was over usual as often as at it.',
    ],
    [
      [at(1, 0, 2), at(1.5, 4)],
      'No corridor: 1.00 (at usual 0 of 2) was mostly over usual, and yet the higher 1.50 (at usual 4 of 4) was not.',
    ],
  ] as const)('says why there is none: %#', (doses, words) => {
    expect(said(...doses)).toBe(words);
  });
});

it('the words by dose hold each dose with its count, and what was not counted with the reason', () => {
  const doses = [at(0.33, 1), at(1, 10), at(1.17, 6, 1)];
  const words = byDoseInWords(
    { doses, corridor: corridorOf(doses), leftOut: [{ why: 'flare', sessions: 3 }] },
    '2026-01-26',
  );
  expect(words[0]).toContain('from 26 Jan 2026 on: 0.33 1 of 1, 1.00 10 of 10 and 1.17 6 of 7.');
  expect(words.at(-1)).toBe('Not counted: 3 in a flare.');
  // The engine's word asks for more than a morning at usual.
  expect(words.join(' ')).not.toMatch(/tolerat/i);
});

it('the steps in words name each dose of the days shown, also one whose load is not known', () => {
  const step = (from: string, to: string | null, share: number | null, way: 'signed' | 'eased-back') => ({
    from,
    to,
    share,
    way,
    inShort: '3 × 12',
  });
  const steps = [
    step('2026-01-05', '2026-02-01', 1, 'signed'),
    step('2026-03-05', '2026-03-12', null, 'signed'),
    step('2026-03-12', null, 0.8, 'eased-back'),
  ];
  expect(stepsInWords(steps, { since, today })).toEqual([
    'Doses in force: load not known from 5 Mar (3 × 12, signed) and 0.80 from 12 Mar (3 × 12, eased back).',
  ]);
  expect(stepsInWords([], { since, today })).toEqual([]);
});
