/** A kept letter: its state, and which sentences are the clinician's own. */
import { describe, expect, it } from 'vitest';
import { letterState, linesIn, ownSentences } from '#core/episode/letters/letter.ts';

const made = { care: 'In our care.', outcomes: 'Two better.', course: '', now: 'Stays.' };
const typed = { care: 'In our care.', outcomes: 'Much better on the stairs.', course: null, now: '  ' };

describe('a letter', () => {
  it('is a draft, then signed, and void whatever it was before', () => {
    expect(letterState({ signature: null, voided: null })).toBe('draft');
    expect(letterState({ signature: {}, voided: null })).toBe('signed');
    expect(letterState({ signature: {}, voided: {} })).toBe('void');
    expect(letterState({ signature: null, voided: {} })).toBe('void');
  });

  it('keeps as somebody’s own only what differs from the record’s sentence, with what it stands in place of', () => {
    expect(ownSentences(typed, made, {}, 'Nuala')).toEqual({
      outcomes: { text: 'Much better on the stairs.', instead: 'Two better.', by: 'Nuala' },
    });
  });

  it('leaves a sentence with whoever wrote it when another saves it unchanged', () => {
    const before = ownSentences(typed, made, {}, 'Nuala');
    expect(ownSentences(typed, { ...made, outcomes: 'Three better.' }, before, 'Rowan')).toEqual(before);
    const again = ownSentences({ ...typed, outcomes: 'Better.' }, made, before, 'Rowan');
    expect(again.outcomes).toEqual({ text: 'Better.', instead: 'Two better.', by: 'Rowan' });
  });

  it('takes copies line by line', () => {
    expect(linesIn(' Dr A \n\nDr B')).toEqual(['Dr A', 'Dr B']);
    expect(linesIn(null)).toEqual([]);
  });
});
