/** What imported mornings say of usual pain: enough of them, of the last days alone, one answer a day. */
import { describe, expect, it } from 'vitest';
import { type MorningOnDay, usualFromImported } from '#core/record/usual-from-imported.ts';
import { addDays } from '#core/time/day.ts';

const morning = (day: string, pain: number | null, joint = 'right-knee' as const): MorningOnDay => ({
  day,
  value: { joint, pain, stiffnessMinutes: null, fatigue: null },
});
const days = (count: number, pain = 3) =>
  Array.from({ length: count }, (_, at) => morning(addDays('2026-02-01', at), pain));

describe('usual pain from imported mornings', () => {
  it.each([
    ['under', 6, 0],
    ['at', 7, 1],
    ['over', 8, 1],
  ])('%s the least mornings, %i: %i joints', (_, count, found) => {
    expect(usualFromImported(days(count))).toHaveLength(found);
  });

  it('is of the last fourteen days: the fourteenth back counts and the fifteenth does not', () => {
    const recent = days(7).map(({ value }, at) => ({ day: addDays('2026-02-14', -at), value }));
    const [at] = usualFromImported([...recent, morning('2026-02-01', 9)]);
    const [over] = usualFromImported([...recent, morning('2026-01-31', 9)]);
    expect([at?.mornings, over?.mornings]).toEqual([8, 7]);
    expect(over).toMatchObject({ firstDay: '2026-02-08', lastDay: '2026-02-14', medianPain: 3 });
  });

  it('takes the higher of two answers for one day, and an unanswered morning for none', () => {
    expect(usualFromImported([...days(6), morning('2026-02-06', 5)])).toEqual([]);
    expect(usualFromImported([...days(6), morning('2026-02-07', null)])).toEqual([]);
    const [one] = usualFromImported([...days(7), ...days(7, 5), ...days(7, 0)]);
    expect(one).toMatchObject({ mornings: 7, medianPain: 5 });
  });
});
