/** The marks of the picture: every logged figure once, missing ones as marks without height, labels that fit. */
import { describe, expect, it } from 'vitest';
import { axisDays, reviewChartOf } from '#core/review/review-chart.ts';
import { zoomed } from '#core/review/zoom.ts';
import { addDays } from '#core/time/day.ts';
import { decision, morning, series, session } from './builders.ts';

describe('the axis', () => {
  it.each([14, 28, 84, 182, 365, 1095])('of %d days has at most 6 labels and ends today', (days) => {
    const labels = axisDays(addDays('2026-03-31', -days), '2026-03-31');
    expect(labels.length).toBeGreaterThanOrEqual(3);
    expect(labels.length).toBeLessThanOrEqual(6);
    expect(labels.at(-1)).toBe('2026-03-31');
  });
});

describe('the marks', () => {
  it('an answer that was due and not given is a mark without height', () => {
    const seen = series({ sessions: [session('2026-03-10', { during: null })] });
    expect(reviewChartOf(seen).pains).toEqual([
      { day: '2026-03-10', of: 'session', value: 2 },
      { day: '2026-03-10', of: 'session', value: null },
      { day: '2026-03-11', of: 'morning', value: null },
    ]);
  });

  it('every session stands once, with an unknown load as unknown', () => {
    const seen = series({
      sessions: [session('2026-03-10'), session('2026-03-12', { kg: null, kind: 'bad-day' })],
    });
    expect(reviewChartOf(seen).loads).toEqual([
      { day: '2026-03-10', value: 4, kind: 'full' },
      { day: '2026-03-12', value: null, kind: 'bad-day' },
    ]);
  });

  it('a gate carries its rule, what was found, the threshold and who says so', () => {
    const reason = {
      rule: 'P2',
      observed: { peak: 6, painCeiling: 5 },
      threshold: 'highest pain over the acceptable pain limit',
      support: 'ageberg-2010',
      effect: { decision: 'ease-back' as const },
    };
    const seen = series({}, { decisions: [{ ...decision('2026-03-10', 'ease-back'), reasons: [reason] }] });
    const [marker] = reviewChartOf(seen).markers;
    expect(marker?.word).toBe('ease-back');
    expect(marker?.reasons[0]).toMatch(/^P2 .*Found: peak 6, pain ceiling 5.*Threshold: .*Support: .*2010/);
  });

  it('says each day in words, with what is missing', () => {
    const seen = series({
      sessions: [session('2026-03-10', { during: null })],
      mornings: [morning('2026-03-11', 4, { flare: true })],
    });
    expect(reviewChartOf(seen).days.map((day) => day.text)).toEqual([
      '10 Mar: load 4 kg; highest pain in the session 2, an answer missing',
      '11 Mar: morning pain 4; flare',
    ]);
  });
});

describe('days that would have been others under values looked back with', () => {
  const others = new Map([
    ['2026-03-09', { way: 'bolder', text: 'Held instead of eased back.' }],
    ['2026-03-11', { way: 'more-cautious', text: 'Held instead of progressed.' }],
    ['2026-03-12', { way: 'other', text: 'The same with another contact.' }],
    ['2027-01-01', { way: 'bolder', text: 'After the picture.' }],
  ] as const);
  const seen = series({ mornings: [morning('2026-03-11', 4), morning('2026-03-12', 2)] });

  it('are marked by their way within the picture; what keeps its decision is told and not marked', () => {
    const chart = reviewChartOf(seen, { others });
    expect(chart.others).toEqual([
      { day: '2026-03-09', way: 'bolder' },
      { day: '2026-03-11', way: 'more-cautious' },
    ]);
    const told = chart.days.map(({ lines }) => lines.join(' '));
    expect(told[0]).toContain('Held instead of progressed.');
    expect(told[1]).toContain('The same with another contact.');
  });

  it('go with the range that is looked at, and there are none where nobody looks back', () => {
    const range = { from: '2026-03-10', to: '2026-03-31' };
    expect(zoomed(reviewChartOf(seen, { others }), range).others).toEqual([
      { day: '2026-03-11', way: 'more-cautious' },
    ]);
    expect(reviewChartOf(seen).others).toEqual([]);
  });
});
