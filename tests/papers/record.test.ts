/** The own copy of the record, read back. */
import { describe, expect, it } from 'vitest';
import { cautionText } from '#messages/cautions.ts';
import { decisionText } from '#messages/decisions.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { exerciseName } from '#messages/exercises.ts';
import { languages } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import { recordSheet } from '#papers/record/record-sheet.ts';
import { printSheet } from '#papers/sheet/print-sheet.ts';
import { tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';
import { look } from './plan-papers.ts';
import { hostile, inert, printed } from './print-and-read.ts';
import { record } from './sheet-papers.ts';

describe('the own copy of the record', () => {
  it.each(languages.map(({ tag }) => tag))(
    'in %s holds what was signed, logged, decided, measured, said and written, in that language but for what was typed',
    async (language) => {
      const { all, read } = await printed(recordSheet(record(), { language }), { language });
      const tongue = everyLanguage[language];
      for (const said of [
        exerciseName(lowLoadDose.exerciseId)[language],
        cautionText({ key: 'stop-signs' })[language],
        decisionText('hold')[language],
        pageWord(language, 'flag.chest-pain'),
        pageWord(language, 'consent.treatment'),
        tongue.sentences['record-paper']['left-out-list'] as string,
        tongue.sentences['record-paper']['not-a-plan'] as string,
        'Carry my shopping',
        'Timed up and go: 11.8 s',
        'Eggs count too.',
        pageWord(language, 'handout.protein-figures', { low: 90, high: 110, meals: 4 }),
        pageWord(language, 'handout.energy', { kcal: 200 }),
        tongue.sentences['record-paper']['advice-withdrawn']
          .toString()
          .replace('{day}', tongue.forms.day?.('2026-03-03', '') ?? '')
          .replace('{name}', 'Nuala Derravane'),
        'Rang about the fall.',
        'Better today.',
        'on the stairs',
        '112',
        '020 913 0140',
        '116 117',
      ])
        expect(all).toContain(said);
      expect(read.untagged).toEqual([]);
      expect(read.language?.slice(0, 2)).toBe(language);
      expect(wholeText(tagsOf(read.tags, /^H1$/)[0]!)).toBe(tongue.sentences['record-paper'].title);
    },
  );

  it('says of nutrition that is not shown any more that it is not, and nothing of what is shown still', async () => {
    const over = everyLanguage.en.sentences['record-paper']['advice-over'] as string;
    const of = async (isNutritionShown: boolean) =>
      (await printed(recordSheet(record({ isNutritionShown }), { language: 'en' }))).all;
    expect(await of(false)).toContain(over);
    expect(await of(true)).not.toContain(over);
  });

  it('writes a set that was not counted and a question not answered as such, never as zero', async () => {
    const { read } = await printed(recordSheet(record(), { language: 'en' }));
    const rows = tagsOf(tagsOf(read.tags, /^TBody$/), /^TR$/).map((row) => row.children.map(wholeText));
    expect(rows[0]).toEqual([
      '21 Jan 2026',
      'Session',
      'Straighten the knee, sitting: 17, not counted with 4 kg, 15 with 3 kg',
      'Right knee',
      '0',
      'not answered',
      '3',
      'not asked',
    ]);
    expect(rows.at(-1)?.[1]).toBe('Not known');
  });

  it('says of each part that nothing is recorded in it', async () => {
    const nothing = record({
      patient: { name: 'A B', birthDay: '1960-01-01', patientNumber: null, phone: null },
      diagnoses: [],
      goals: [],
      changes: [],
      versions: [],
      sessions: [],
      decisions: [],
      signs: [],
      measured: [],
      screenings: [],
      consents: [],
      events: [],
      nutrition: [],
      notes: [],
      messages: [],
    });
    const { all } = await printed(recordSheet(nothing, { language: 'en' }));
    expect(all.match(/Nothing is recorded\./g)).toHaveLength(15);
  });

  it('gives the same bytes twice, and keeps a message of any kind as letters', async () => {
    const sheet = recordSheet(
      record({ messages: [{ on: '2026-02-04', by: 'Maeve', text: `${hostile} ${'x'.repeat(10_000)}` }] }),
      { language: 'en' },
    );
    const { pdf, all } = await printed(sheet);
    expect(Buffer.from(pdf).equals(Buffer.from((await printSheet(sheet, look)).pdf))).toBe(true);
    expect(all).toContain(inert);
  });
});
