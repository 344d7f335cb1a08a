/** The papers of parts, read back: headings in order, cautions, signs and numbers wherever exercise is spoken of. */
import { describe, expect, it } from 'vitest';
import { redFlagClasses } from '#core/decision/facts/facts.ts';
import { cautionText } from '#messages/cautions.ts';
import { decisionText } from '#messages/decisions.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { exerciseName } from '#messages/exercises.ts';
import { languages } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import { flareNoteSheet } from '#papers/flare-note/flare-note-sheet.ts';
import { handoverSheet } from '#papers/handover/handover-sheet.ts';
import { recordSheet } from '#papers/record/record-sheet.ts';
import { printSheet } from '#papers/sheet/print-sheet.ts';
import type { SheetPaper } from '#papers/sheet/sheet-paper.ts';
import { readPdf, tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';
import { look } from './plan-papers.ts';
import { flareNote, handover, record } from './sheet-papers.ts';

const printed = async (sheet: SheetPaper, over: Partial<typeof look> = {}) => {
  const made = printSheet(sheet, { ...look, ...over });
  const read = await readPdf(made.pdf);
  return { ...made, read, all: read.text.join(' ') };
};

const hostile = '#read("/etc/passwd") *bold* $y$ <tag> \u202eleft \u{1F9B5}';

const sheets = [
  {
    kind: 'handover',
    make: (reason = 'Seen') =>
      handoverSheet(
        handover({
          overrides: [
            {
              joint: 'right-knee',
              engine: 'ease-back',
              instead: 'hold',
              reason,
              by: 'Closer',
              until: '2026-04-30',
            },
          ],
        }),
      ),
    headings: [
      'Handover',
      'Care',
      'Urgent',
      'Pauses and who follows them up',
      'Limits',
      'Methods not available, and why',
      'Last three decisions',
      'Overrides',
      'Not signed yet',
      'In force',
      'Cautions of the present doses',
      'Warning signs on which the patient stops, in the patient’s words',
    ],
  },
  {
    kind: 'flare-note',
    make: (remark = 'skipped') =>
      flareNoteSheet(
        flareNote({
          events: [{ day: '2026-04-02', kind: 'medicine-change', joint: null, remark, medicine: null }],
        }),
        look,
      ),
    headings: [
      'Note about a flare',
      'What we ask of you',
      'The flare',
      'What was eased',
      'What is done now',
      'What was taken',
      'Changes in eight weeks',
      'The last fourteen days, morning answers',
      'Cautions of the present doses',
      'Warning signs on which the patient stops, in the patient’s words',
    ],
  },
] as const;

describe.each(sheets)('the $kind on paper', ({ make, headings }) => {
  it.each([
    { paper: 'a4', isLarge: false, size: [210, 297] },
    { paper: 'letter', isLarge: true, size: [216, 279] },
  ] as const)(
    'on $paper, large type $isLarge: headings in order, caution, signs and numbers, all of it tagged',
    async ({ size, ...as }) => {
      const { read, all } = await printed(make(), as);
      expect(tagsOf(read.tags, /^H\d$/).map(wholeText)).toEqual(headings);
      expect(read.untagged).toEqual([]);
      expect(read.size).toEqual(size);
      expect(all).toContain('Knee: swelling the next morning counts as an answer.');
      for (const number of ['112', '020 913 0140', '116 117']) expect(all).toContain(number);
      for (const flag of redFlagClasses.emergency) expect(all).toContain(pageWord('en', `flag.${flag}`));
    },
  );

  it('gives the same bytes twice', () => {
    const [once, again] = [printSheet(make(), look), printSheet(make(), look)];
    expect(Buffer.from(once.pdf).equals(Buffer.from(again.pdf))).toBe(true);
  });

  it('keeps what somebody typed as letters, and names what it cannot print', async () => {
    const { all, unprintable } = await printed(make(hostile));
    expect(all).toContain('#read("/etc/passwd") *bold* $y$ <tag> ▯left ▯');
    expect(unprintable).toEqual(['U+202E', 'U+1F9B5']);
    expect(all).toContain('U+202E, U+1F9B5');
  });
});

describe('the handover on paper', () => {
  it('gives no dose of what rests, the easier session alone of what is eased, and who signed each', async () => {
    const [one] = handover().inForce;
    const resting = await printed(handoverSheet(handover({ inForce: [{ ...one!, today: 'none' }] })));
    expect(resting.all).toContain('Straighten the knee, sitting: rests now. Signed by Nuala Derravane.');
    expect(resting.all).not.toContain('sets of');
    const eased = await printed(handoverSheet(handover({ inForce: [{ ...one!, today: 'bad-day' }] })));
    expect(eased.all).toContain('only the easier session now. 2 sets');
    expect(eased.all).not.toContain('3 sets');
  });

  it('says what there is none of', async () => {
    const { all } = await printed(handoverSheet(handover({ inForce: [], coveringClinician: null })));
    for (const said of [
      'No episode of care is recorded.',
      'None open.',
      'No covering clinician is named.',
      'Nothing is paused.',
      'None in force.',
      'No method is contraindicated or needs clearance.',
      'No override is in force.',
      'No prescription needs signing.',
      'No prescription is in force.',
    ])
      expect(all).toContain(said);
  });
});

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
    expect(Buffer.from(pdf).equals(Buffer.from(printSheet(sheet, look).pdf))).toBe(true);
    expect(all).toContain('#read("/etc/passwd") *bold* $y$ <tag> ▯left ▯');
  });
});

describe('the note about a flare', () => {
  it('tells onset, joints, stiffness, what was taken, changed and eased, and asks one thing', async () => {
    const { all, read } = await printed(flareNoteSheet(flareNote(), look));
    for (const said of [
      'Tell us whether the treatment of the arthritis is to change, and by when you will see the patient.',
      'right wrist: reported since 16 Apr 2026, last on 20 Apr 2026, 5 days.',
      'right hand: no flare was reported since 24 Feb 2026.',
      'Joint counts of 16 Mar 2026: 4 tender and 2 swollen of 28.',
      'JAK inhibitor, biologic or recent quinolone (from memory): yes; Biologic (answered 16 Mar 2026).',
      'more pain relief than usual on 3, no more than usual on 30, not answered on 2.',
      '2 Apr 2026: A medicine was changed: “skipped two weeks”.',
      '18 Apr 2026: warning sign reported: “A fever, or chills, and you don’t know why”.',
      'right wrist: less advised on 5 days, first on 16 Apr 2026, last on 20 Apr 2026.',
      'only the easier session now. 2 sets',
    ])
      expect(all).toContain(said);
    const rows = tagsOf(tagsOf(read.tags, /^TBody$/), /^TR$/).map((row) => row.children.map(wholeText));
    expect(rows).toEqual([
      ['20 Apr 2026', 'right wrist', '6', '90 min', 'a little more than usual', 'yes'],
      ['20 Apr 2026', 'right hand', 'not answered', 'not asked', 'not answered', 'not answered'],
    ]);
  });

  it('says what is not recorded, and never takes it for none', async () => {
    const nothing = flareNote({
      patient: { name: 'A B', birthDay: '1960-01-01', patientNumber: null },
      diagnoses: [],
      isInflammatory: false,
      joints: [],
      mornings: [],
      jointCounts: null,
      medicines: [],
      events: [],
      signs: [],
      signed: [],
      eased: [],
      inForce: [],
    });
    const { all } = await printed(flareNoteSheet(nothing, look));
    for (const said of [
      'patient number: not recorded',
      'Diagnoses: not recorded.',
      'Not recorded as inflammatory arthritis.',
      'No joint is followed.',
      'No joint counts are recorded.',
      'Medicines were not asked about.',
      'Nothing was eased since 24 Feb 2026.',
      'that nobody entered is not known to this record.',
      'No morning was logged in the last fourteen days.',
    ])
      expect(all).toContain(said);
  });
});
