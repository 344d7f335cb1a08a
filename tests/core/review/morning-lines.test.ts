/** What the detail of a day says of how the morning was answered. */
import { expect, it } from 'vitest';
import type { MorningRecord } from '#core/record/record.ts';
import { dayDetail } from '#core/review/day-detail.ts';
import { addDays } from '#core/time/day.ts';
import { morning, series, today } from './builders.ts';

const linesOf = (one: MorningRecord) => {
  const shown = series({ mornings: [one] });
  return shown.rows.flatMap((row) => dayDetail(row, shown, {}).lines);
};

it.each([
  ['as-yesterday', true],
  ['asked', false],
  [undefined, false],
] as const)('a morning answered %s says that all but pain was one press: %s', (via, isSaid) => {
  const given = morning(addDays(today, -1), 2);
  const lines = linesOf(via ? { ...given, via } : given);
  expect(lines.some((line) => line.includes('by one press: as yesterday'))).toBe(isSaid);
  expect(lines.some((line) => line.startsWith('Morning: pain 2'))).toBe(true);
});
