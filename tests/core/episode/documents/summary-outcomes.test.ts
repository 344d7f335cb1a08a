/** The summary at the end of care gives what was measured, and calls a change only what is one. */
import { expect, it } from 'vitest';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { dischargeIn } from '#messages/papers/discharge.ts';
import { careFacts } from '#tests/papers/care-facts.ts';

const stands = (day: string, count: number) =>
  ({ kind: 'chair-stand-30s', day, stands: count, recordedBy: 'Tester' }) as const;
const linesOf = (...rows: ReturnType<typeof stands>[]) => {
  const outcomes = outcomeLines(rows, [], {
    sex: 'female',
    birthDay: '1958-06-01',
    errorGroup: 'knee-osteoarthritis-mild',
  });
  return dischargeIn('en', { ...careFacts('Agreed'), outcomes }, '2026-05-02').parts[2]?.lines ?? [];
};

it('gives first and last of what was measured twice, and calls nothing a change that was measured once', () => {
  expect(linesOf(stands('2026-03-02', 9), stands('2026-04-28', 12))[0]).toContain(
    '30-second chair stand: 9 stands (2 Mar 2026), 12 stands (28 Apr 2026). +3 stands, beyond the error',
  );
  expect(linesOf(stands('2026-03-02', 9))).toEqual([
    'Nothing was measured a second time, so no change can be named.',
  ]);
});
