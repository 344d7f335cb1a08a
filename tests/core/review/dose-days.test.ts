/** The days on which doses changed, and which of them were signed. */
import { expect, it } from 'vitest';
import { doseDays } from '#core/review/dose-days.ts';

const step = (from: string, inShort: string, way: 'signed' | 'within-band' | 'eased-back' = 'signed') => ({
  from,
  inShort,
  way,
});

it('several doses signed on one day stand together, and the days oldest first', () => {
  expect(
    doseDays([step('2026-03-02', '3 × 12'), step('2026-01-05', '2 × 15'), step('2026-03-02', '5 kg')]),
  ).toEqual([
    { day: '2026-01-05', isSigned: true, steps: ['2 × 15'] },
    { day: '2026-03-02', isSigned: true, steps: ['3 × 12', '5 kg'] },
  ]);
});

it('what acted at once within a signed band or was eased back stands apart from what was signed', () => {
  expect(
    doseDays([
      step('2026-03-02', '× 14', 'within-band'),
      step('2026-03-02', '5 kg'),
      step('2026-03-03', '× 12', 'eased-back'),
    ]),
  ).toEqual([
    { day: '2026-03-02', isSigned: true, steps: ['5 kg'] },
    { day: '2026-03-02', isSigned: false, steps: ['× 14'] },
    { day: '2026-03-03', isSigned: false, steps: ['× 12'] },
  ]);
});
