/** What resting blood pressure and the ankle-brachial index close, and for how long a reading counts. */
import { describe, expect, it } from 'vitest';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { bloodPressure, outcomeOf, screeningWith, today } from './answers.ts';

describe('blood pressure', () => {
  const at = (method: 'low-load' | 'occlusion', measurements: readonly Measurement[], changed = {}) =>
    outcomeOf(method, 'leg', 'left', { measurements, ...changed }).eligibility;

  it('from 180 or 110 holds everything; from 160 or 100 holds occlusion and asks a clinician about the rest', () => {
    const pair = (systolic: number, diastolic: number) => [
      at('low-load', [bloodPressure(systolic, diastolic)]),
      at('occlusion', [bloodPressure(systolic, diastolic)]),
    ];
    expect(pair(159, 99)).toEqual(['open', 'open']);
    expect(pair(160, 80)).toEqual(['closed-until-cleared', 'closed']);
    expect(pair(140, 100)).toEqual(['closed-until-cleared', 'closed']);
    expect(pair(179, 109)).toEqual(['closed-until-cleared', 'closed']);
    expect(pair(180, 80)).toEqual(['closed', 'closed']);
    expect(pair(150, 110)).toEqual(['closed', 'closed']);
  });

  it('not measured keeps occlusion closed and is said for low load', () => {
    expect(at('occlusion', [])).toBe('closed');
    expect(at('low-load', [])).toBe('open-with-precautions');
  });

  it('not measured closes low load too, once high blood pressure was named or is not known', () => {
    for (const answer of ['yes', 'not-known'] as const) {
      const screening = screeningWith([{ item: 'high-blood-pressure', answer }]);
      expect(at('low-load', [], { screening })).toBe('closed');
    }
  });

  it('counts for 28 days and not for 29 (clinic choice), and never from the future', () => {
    expect(at('occlusion', [bloodPressure(124, 76, '2026-02-03')])).toBe('open'); // 27
    expect(at('occlusion', [bloodPressure(124, 76, '2026-02-02')])).toBe('open'); // 28
    expect(at('occlusion', [bloodPressure(124, 76, '2026-02-01')])).toBe('closed'); // 29
    expect(at('occlusion', [bloodPressure(124, 76, '2026-03-03')])).toBe('closed');
  });

  it('is the newest day, and the highest of that day, whatever the order of entry', () => {
    const old = bloodPressure(190, 100, '2026-02-20');
    const now = bloodPressure(124, 76);
    expect([at('occlusion', [old, now]), at('occlusion', [now, old])]).toEqual(['open', 'open']);
    const again = bloodPressure(170, 80);
    expect([at('occlusion', [again, now]), at('occlusion', [now, again])]).toEqual(['closed', 'closed']);
  });

  it('that cannot be read is not a normal one', () => {
    expect(at('occlusion', [bloodPressure(Number.NaN, 70)])).toBe('closed');
    expect(at('occlusion', [bloodPressure(70, 120)])).toBe('closed');
  });

  it('diagnosed keeps occlusion closed even when treated and in range, until a clinician clears it', () => {
    const screening = screeningWith([{ item: 'high-blood-pressure', answer: 'yes' }]);
    const outcome = outcomeOf('occlusion', 'arm', 'left', { screening });
    expect(outcome.eligibility).toBe('closed-until-cleared');
    expect(outcome.reasons).toMatchObject([
      { code: 'diagnosed-high-blood-pressure', clearedBy: 'clinician' },
    ]);
    expect(outcomeOf('low-load', 'arm', 'left', { screening }).eligibility).toBe('open-with-precautions');
  });

  it('a clinic may tighten its gate', () => {
    const changed = { measurements: [bloodPressure(150, 80)], settings: { 'hold-occlusion-systolic': 150 } };
    expect(outcomeOf('occlusion', 'leg', 'left', changed).eligibility).toBe('closed');
  });
});

describe('ankle-brachial index', () => {
  const reading = (ankle: number, day = today, side: 'left' | 'right' = 'left'): Measurement => ({
    kind: 'ankle-brachial-index',
    day,
    side,
    dorsalisPedisMmhg: ankle,
    posteriorTibialMmhg: 0,
    brachialMmhg: [100, 98],
  });
  const leg = (...readings: Measurement[]) =>
    outcomeOf('occlusion', 'leg', 'left', { measurements: [bloodPressure(124, 76), ...readings] })
      .eligibility;

  it('up to 0.90 and over 1.40 closes that leg, 0.91 to 0.99 waits for a clinician', () => {
    expect([90, 91, 99, 100, 140, 141].map((ankle) => leg(reading(ankle)))).toEqual([
      'closed',
      'closed-until-cleared',
      'closed-until-cleared',
      'open',
      'open',
      'closed',
    ]);
  });

  it('speaks of its own leg only, and of no other method', () => {
    const measurements = [bloodPressure(124, 76), reading(80)];
    expect(outcomeOf('occlusion', 'leg', 'right', { measurements }).eligibility).toBe('open');
    expect(outcomeOf('occlusion', 'arm', 'left', { measurements }).eligibility).toBe('open');
    expect(outcomeOf('low-load', 'leg', 'left', { measurements }).eligibility).toBe('open');
  });

  it('dated tomorrow does not count yet', () => {
    expect(leg(reading(110), reading(80, '2026-03-03'))).toBe('open');
    expect(leg(reading(80), reading(110, '2026-03-03'))).toBe('closed');
  });

  it('does not age into being normal, and yields to a newer one', () => {
    expect(leg(reading(80, '2020-01-01'))).toBe('closed');
    expect(leg(reading(80, '2025-01-01'), reading(110, '2026-02-01'))).toBe('open');
  });
});
