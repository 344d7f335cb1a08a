/** Pinch and span of a hand are kept by side, never judged, and asked about where they are far from usual. */
import { describe, expect, it } from 'vitest';
import { handSpan } from '#core/assessment/measures/hand-span.ts';
import { pinch } from '#core/assessment/measures/pinch.ts';
import { measureOf, measures } from '#core/assessment/measures/registry.ts';

const day = '2026-03-02';
const key = { kind: 'pinch', day, pinch: 'key', side: 'right', forceKg: 4.5 } as const;
const span = { kind: 'hand-span', day, side: 'left', spanMm: 182 } as const;

describe('measures of the hand', () => {
  it('can be recorded', () => {
    expect(measures.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['pinch', 'hand-span']));
    expect(measureOf('pinch')).toBe(pinch);
  });

  it('tip and key pinch are two things, and so are two sides', () => {
    expect(pinch.sameBy).toEqual(['pinch', 'side']);
    expect(handSpan.sameBy).toEqual(['side']);
  });

  it('read with how they were taken and their unit', () => {
    expect(pinch.inWords(key)).toBe('key pinch, 4.5 kg');
    expect(handSpan.inWords(span)).toBe('182 mm');
  });

  it('are never called a change, since no error of measuring them is on file', () => {
    const { change } = pinch.course as unknown as {
      change: (a: typeof key, b: typeof key) => { sentence: string; verdict: string };
    };
    expect(change(key, { ...key, forceKg: 5 as 4.5 })).toMatchObject({
      sentence: expect.stringContaining('+0.5 kg. No error of measuring pinch is on file.'),
      verdict: 'not-judged',
    });
  });

  it.each([
    // Bounds and the usual range are choices of this project: a slip of typing, not a judgement.
    [pinch.fields[2], 0, 25],
    [handSpan.fields[1], 20, 320],
  ])('%j refuses what cannot be', (field, min, max) => {
    expect(field).toMatchObject({ min, max });
  });
});
