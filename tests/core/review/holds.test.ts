/** Holds in the review: what is shown of them, and their share of the first signed dose. Worked by hand. */
import { describe, expect, it } from 'vitest';
import type { VariationDose } from '#core/prescribing/dose.ts';
import { loadOfSession, measureInFull, measuresOf } from '#core/review/load-of-session.ts';
import { dose as loaded, session, version } from './builders.ts';

const held = (low: number, seconds: number): VariationDose => ({
  method: 'variation',
  exerciseId: 'thumb-out-hold',
  side: 'left',
  sets: 2,
  repetitions: { low, high: 10 },
  reserve: 2,
  restSeconds: 90,
  secondsPerRepetition: seconds + 5,
  sessionsPerWeek: 3,
  effectiveLoadKg: null,
  addedKg: 0,
  hold: { seconds, mostSeconds: 10 },
});

const first = version(1, { dose: held(5, 5) });
const second = version(2, { dose: held(5, 7) });
const versions = new Map([first, second].map((one) => [one.id, one]));

const shown = (of: number, repetitions: readonly (number | null)[], measure: 'held' | 'dose') =>
  loadOfSession(session('2026-03-02', { version: of, repetitions, kg: 0 }), 'line', versions, measure)?.value;

describe('holds in the review', () => {
  it('are shown as the dose, the time held, sets and effort, and never as repetitions', () => {
    expect(measuresOf(held(5, 5))).toEqual(['dose', 'held', 'sets', 'effort']);
    expect(measuresOf(loaded)).not.toContain('held');
    expect(measureInFull('held')).toBe('Time held, s');
  });

  it('were held for holds times seconds: 5 and 6 of 5 s are 55 s, 5 and 5 of 7 s are 70 s', () => {
    expect(shown(1, [5, 6], 'held')).toBe(55);
    expect(shown(2, [5, 5], 'held')).toBe(70);
  });

  it('have a share of the first signed dose by both: 2 × 5 of 7 s over 2 × 5 of 5 s are 1.4', () => {
    expect(shown(1, [5, 5], 'dose')).toBe(1);
    expect(shown(2, [5, 5], 'dose')).toBe(1.4);
    // One set of two left out.
    expect(shown(2, [5], 'dose')).toBe(0.7);
  });

  it('are not known where a count was lost', () => {
    expect(shown(1, [5, null], 'held')).toBeNull();
    expect(shown(1, [5, null], 'dose')).toBeNull();
  });
});
