/** Pinch and span of a hand are kept by side, never judged, and asked about where they are far from usual. */
import { describe, expect, it } from 'vitest';
import { sideLines } from '#core/assessment/course/side-to-side.ts';
import { handSpan } from '#core/assessment/measures/hand-span.ts';
import { pinch } from '#core/assessment/measures/pinch.ts';
import { measureOf, measures } from '#core/assessment/measures/registry.ts';
import { measurementInWords, subjectOf } from '#ui/clinician/measurements/measurement-words.ts';

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
    expect([subjectOf(key), measurementInWords(key)]).toEqual(['key pinch, right', '4.5 kg']);
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

  it('are held against the other hand, each pinch against its own kind, and not judged', () => {
    const lines = sideLines([
      key,
      { ...key, side: 'left', forceKg: 5 },
      { ...key, pinch: 'tip', forceKg: 3 },
      span,
      { ...span, side: 'right', spanMm: 180 },
    ]);
    expect(lines).toMatchObject([
      {
        title: 'Pinch strength: key',
        left: { text: '5 kg' },
        right: { text: '4.5 kg' },
        verdict: 'not-judged',
        sentence: expect.stringMatching(/^Right less left: −0\.5 kg\. Right is 90 % of left\./),
      },
      {
        title: 'Hand span',
        verdict: 'not-judged',
        sentence: 'Right less left: −2 mm. The error of measuring is not known, so this is not judged.',
      },
    ]);
  });

  it.each([
    // Bounds and the usual range are choices of this project: a slip of typing, not a judgement.
    [pinch.fields[2], 0, 25],
    [handSpan.fields[1], 20, 320],
  ])('%j refuses what cannot be', (field, min, max) => {
    expect(field).toMatchObject({ min, max });
  });
});
