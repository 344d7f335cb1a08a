/** What was sent and what was not, counted by day; and whether questions wait before a visit. */
import { describe, expect, it } from 'vitest';
import { countLog } from '#core/episode/documents/document-facts.ts';
import { questionsWait } from '#core/screening/pre-visit.ts';

describe('counting what was sent', () => {
  const log = (over = {}) =>
    countLog({
      sessions: [
        { day: '2026-03-02', kind: 'full' },
        { day: '2026-03-02', kind: 'bad-day' },
        { day: '2026-03-06', kind: 'full' },
      ],
      mornings: [{ day: '2026-03-01' }, { day: '2026-03-03' }],
      planned: [{ day: '2026-03-02' }, { day: '2026-03-04' }, { day: '2026-03-05' }],
      off: new Set(['2026-03-04']),
      from: '2026-03-02',
      to: '2026-03-05',
      ...over,
    });

  it('keeps to the episode, first and last day included, and leaves days of a break out', () => {
    expect(log()).toEqual({
      careDays: 3,
      sessions: 2,
      easierSessions: 1,
      testSessions: 0,
      plannedDays: 2,
      plannedDaysWithout: 1,
      mornings: 1,
      daysWithoutMorning: 2,
    });
  });

  it('counts no missing session where no programme was written', () => {
    expect(log({ planned: null }).plannedDays).toBeNull();
  });
});

describe('whether questions wait before a visit', () => {
  const base = { sent: null, returnedOn: null, validDays: 90, today: '2026-06-01' };
  const on = (day: string) => ({ day, recordedAt: 100 });

  it('they do where nothing was screened, until answers were sent', () => {
    expect(questionsWait({ ...base, screening: null })).toBe(true);
    expect(questionsWait({ ...base, screening: null, sent: { recordedAt: 1 } })).toBe(false);
  });

  it.each([
    ['2026-03-04', false],
    ['2026-03-03', false],
    ['2026-03-02', true],
  ] as const)('a screening of %s under 90 days: %s', (day, waits) => {
    expect(questionsWait({ ...base, screening: on(day) })).toBe(waits);
  });

  it('they do after a return, and not while sent answers wait for a clinician', () => {
    const back = { ...base, screening: on('2026-05-20'), returnedOn: '2026-05-21' };
    expect(questionsWait(back)).toBe(true);
    expect(questionsWait({ ...back, sent: { recordedAt: 101 } })).toBe(false);
    expect(questionsWait({ ...back, returnedOn: '2026-05-20' })).toBe(false);
  });
});
