/** The days on which a clinician signed something new. */
import { expect, it } from 'vitest';
import { signedDays } from '#core/review/signed-days.ts';

const step = (from: string, inShort: string, way: 'signed' | 'within-band' | 'eased-back' = 'signed') => ({
  from,
  inShort,
  way,
});

it('several doses signed on one day stand together, and the days oldest first', () => {
  expect(
    signedDays([step('2026-03-02', '3 × 12'), step('2026-01-05', '2 × 15'), step('2026-03-02', '5 kg')]),
  ).toEqual([
    { day: '2026-01-05', steps: ['2 × 15'] },
    { day: '2026-03-02', steps: ['3 × 12', '5 kg'] },
  ]);
});

it('what acted at once within a signed band or was eased back is no signature', () => {
  expect(
    signedDays([step('2026-03-02', '× 14', 'within-band'), step('2026-03-03', '× 12', 'eased-back')]),
  ).toEqual([]);
});
