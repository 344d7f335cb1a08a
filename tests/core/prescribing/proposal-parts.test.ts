import { describe, expect, it } from 'vitest';
import { cautionsNewTo, cautionsParted, notesParted } from '#core/prescribing/proposal-parts.ts';
import { proposePrescription } from '#core/prescribing/propose.ts';
import { context, limit } from './choice/known-patient.ts';

const caution = (from: string, text = `from ${from}`) => ({ from, text });

describe('what of a proposal stands open', () => {
  it('is every caution from this person’s own record: answers, medicines, limits, and a source not known here', () => {
    const own = ['high-blood-pressure', 'medicines', 'limit', 'something-new'].map((from) => caution(from));
    const general = ['always', 'method', 'joint', 'exercise'].map((from) => caution(from));
    const { open, folded } = cautionsParted([...general, ...own], null);
    expect(open).toEqual(own);
    expect(folded).toEqual(general);
  });

  it('is every caution the dose in force has not, whatever it comes from, and one whose words changed', () => {
    const known = [caution('always'), caution('method', 'From 160 no cuff.')];
    const now = [caution('always'), caution('method', 'From 150 no cuff.'), caution('joint')];
    expect(cautionsParted(now, known).open).toEqual(now.slice(1));
    expect(cautionsNewTo(now, known)).toEqual(now.slice(1));
  });

  it('and what is folded are together all that was said, each once', () => {
    const limits = [limit({ limitKg: 3 })];
    const outcome = proposePrescription(
      { ...context, limits },
      { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' },
    );
    if (!outcome.ok) throw new Error('Nothing was proposed.');
    const { cautions, notes } = outcome.result;
    const parts = cautionsParted(cautions, null);
    const texts = [...parts.open, ...parts.folded].map(({ text }) => text);
    expect(texts.toSorted()).toEqual(cautions.map(({ text }) => text).toSorted());
    expect(parts.open.map(({ from }) => from)).toEqual(['limit']);
    const noteParts = notesParted(notes);
    expect([...noteParts.open, ...noteParts.folded]).toHaveLength(notes.length);
    expect(noteParts.folded.length).toBeGreaterThan(0);
  });

  it('is every note that speaks of this dose, and one not known here', () => {
    const notes = [
      'under-floor',
      'over-top',
      'no-heavier-load',
      'step-over-window',
      'ceiling-applied',
      'new-note',
    ];
    const shown = notes.map((code) => ({ code, text: code }));
    expect(notesParted([...shown, { code: 'evidence-limits', text: 'general' }]).open).toEqual(shown);
  });
});
