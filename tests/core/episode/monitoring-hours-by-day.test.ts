/** Monitoring hours as they are typed, a line for each day. */
import { describe, expect, it } from 'vitest';
import { hoursByDay, type MonitoringHours, monitoringHoursFromDays } from '#core/episode/monitoring-hours.ts';

const read = (typed: Parameters<typeof monitoringHoursFromDays>[0]) => monitoringHoursFromDays(typed);
const refusedFor = (Mon: string): string => {
  const answer = read({ Mon });
  return answer.ok ? '' : answer.refused.map(({ field, reason }) => `${field} ${reason}`).join(' ');
};

describe('hours typed by day', () => {
  it('are days with the same hours together, in the order of the week', () => {
    const weekday = '8:30-12:00, 13-18:30';
    expect(read({ Sat: '9-12', Mon: weekday, Tue: weekday, Thu: weekday })).toEqual({
      ok: true,
      hours: [
        { days: ['Mon', 'Tue', 'Thu'], from: '08:30', to: '12:00' },
        { days: ['Mon', 'Tue', 'Thu'], from: '13:00', to: '18:30' },
        { days: ['Sat'], from: '09:00', to: '12:00' },
      ],
    });
  });

  it('come back as they can be typed again', () => {
    const hours: MonitoringHours = [
      { days: ['Mon', 'Tue'], from: '08:00', to: '12:00' },
      { days: ['Mon'], from: '14:00', to: '18:00' },
    ];
    expect(hoursByDay(hours).Mon).toBe('08:00-12:00, 14:00-18:00');
    expect(read(hoursByDay(hours))).toEqual({ ok: true, hours });
  });

  it('left empty on every day are no hours, which is an answer', () => {
    expect(read({})).toEqual({ ok: true, hours: [] });
  });

  it.each([
    ['mornings', 'hours.Mon Monday: write hours such as 8:30-12:00, 13:00-18:30, or leave it empty.'],
    ['8-25', 'hours.Mon Monday: write hours such as 8:30-12:00, 13:00-18:30, or leave it empty.'],
    ['12-8', 'hours.Mon Monday: 12:00 is not before 08:00. Write the earlier time first.'],
    ['8-8', 'hours.Mon Monday: 08:00 is not before 08:00. Write the earlier time first.'],
    ['8-12, 11-14', 'hours.Mon Monday: two of these hours overlap. Write them as one.'],
  ])('that cannot be read are refused with the day and the way out: “%s”', (typed, said) => {
    expect(refusedFor(typed)).toBe(said);
  });

  it('that are wrong on two days name both at once', () => {
    const answer = read({ Mon: 'x', Fri: '9-8' });
    expect(answer.ok ? [] : answer.refused.map(({ field }) => field)).toEqual(['hours.Mon', 'hours.Fri']);
  });
});
