/** Papers in a language made by machine: what is still English was never translated, and longer words fit. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { words as dischargeWords } from '#messages/en/colleagues/discharge.ts';
import { words as flareNoteWords } from '#messages/en/colleagues/flare-note.ts';
import { words as handoverWords } from '#messages/en/colleagues/handover.ts';
import { words as letterSentences } from '#messages/en/colleagues/letter.ts';
import { words as sheetSentences } from '#messages/en/colleagues/sheet.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { exerciseName } from '#messages/exercises.ts';
import { letterSpeech } from '#messages/papers/colleague-words.ts';
import { dischargeSheet, selfManagementSheet } from '#papers/end-of-care/end-of-care-sheets.ts';
import { flareNoteSheet } from '#papers/flare-note/flare-note-sheet.ts';
import { handoverSheet } from '#papers/handover/handover-sheet.ts';
import { letterWords } from '#papers/letter/letter-data.ts';
import { unframed } from '#papers/letter/letter-frame.ts';
import { printWords } from '#papers/letter/print-letter.ts';
import { printPlan } from '#papers/plan/print-plan.ts';
import { recordSheet } from '#papers/record/record-sheet.ts';
import { printSheet } from '#papers/sheet/print-sheet.ts';
import type { Typeset } from '#papers/typesetting/typeset.ts';
import { pseudoOf, pseudoWords } from '#tests/messages/pseudo.ts';
import { readPdf, tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';
import { careFacts } from './care-facts.ts';
import { letter } from './letter-papers.ts';
import { look, plan } from './plan-papers.ts';
import { flareNote, handover, record } from './sheet-papers.ts';

const said = [letterSentences, dischargeWords, flareNoteWords, handoverWords, sheetSentences];
const given = { language: { ...everyLanguage.en }, words: said.map((words) => ({ ...words })) };

/** English gives its place to the made one, and takes it again: other files of tests run beside this one. */
beforeAll(() => {
  Object.assign(everyLanguage.en, pseudoOf(given.language));
  for (const words of said) Object.assign(words, pseudoWords(words));
});
afterAll(() => {
  Object.assign(everyLanguage.en, given.language);
  for (const [at, words] of said.entries()) Object.assign(words, given.words[at]);
});

/** Looked up once, as the program starts: still the English one. */
const named = exerciseName(lowLoadDose.exerciseId).en;

const papers: Readonly<Record<string, (isLarge: boolean) => Promise<Typeset>>> = {
  plan: (isLarge) => printPlan(plan(), { ...look, isLarge }),
  record: (isLarge) => printSheet(recordSheet(record(), look), { ...look, isLarge }),
  'self-management': (isLarge) =>
    printSheet(selfManagementSheet(careFacts('Agreed'), look)!, { ...look, isLarge }),
  letter: (isLarge) =>
    printWords(letterWords(letter(), unframed('Dr Invented'), letterSpeech('en'), '2026-04-20'), {
      ...look,
      isLarge,
    }),
  handover: (isLarge) => printSheet(handoverSheet(handover(), look), { ...look, isLarge }),
  discharge: (isLarge) =>
    printSheet(dischargeSheet(careFacts('Agreed'), '2026-05-04', look), { ...look, isLarge }),
  'flare-note': (isLarge) => printSheet(flareNoteSheet(flareNote(), look), { ...look, isLarge }),
};

describe.each(Object.keys(papers))('the %s in a pseudo-language', (kind) => {
  it.each([false, true])('has every heading and table head in it, large type %s', async (isLarge) => {
    const { tags, untagged } = await readPdf((await papers[kind]!(isLarge)).pdf);
    const heads = tagsOf(tags, /^(H\d|TH)$/).map(wholeText);
    expect(heads.length).toBeGreaterThan(5);
    // A day over a column is a figure, not a sentence.
    const left = heads.filter((head) => !head.includes('⟦') && head !== named && !/^\S+ \d{1,2}$/.test(head));
    expect(left).toEqual([]);
    expect(untagged).toEqual([]);
  });
});
