/** A note says something of a day that has been, and is found by its words. */
import { describe, expect, it } from 'vitest';
import { isInNote, type VisitNote, visitNoteRefusals } from '#core/episode/visit-note.ts';

const note: VisitNote = {
  contact: 'telephone',
  day: '2026-03-02',
  subjective: 'Stairs go better; Knie überwärmt am Abend.',
  objective: null,
  assessment: null,
  plan: 'Keep 3 × 20.',
  text: null,
};
const nothing = { subjective: null, plan: null };

describe('a note', () => {
  it.each([
    ['2026-03-01', 1],
    ['2026-03-02', 0],
    ['2026-03-03', 0],
  ])('of 2 March written on %s has %i faults', (today, faults) => {
    expect(visitNoteRefusals(note, today)).toHaveLength(faults);
  });

  it('that says nothing under any heading is refused, and by one heading it is not', () => {
    expect(visitNoteRefusals({ ...note, ...nothing }, note.day)[0]?.reason).toMatch(/at least one heading/);
    expect(visitNoteRefusals({ ...note, ...nothing, objective: 'Cool.' }, note.day)).toEqual([]);
  });

  it('is found by the beginnings of its words in any order and under any heading, accents apart', () => {
    for (const wanted of ['', 'stairs', 'keep stair', 'uberwarmt', '20'])
      expect(isInNote(note, wanted), wanted).toBe(true);
    for (const wanted of ['hip', 'stairs hip', 'tairs']) expect(isInNote(note, wanted), wanted).toBe(false);
  });
});
