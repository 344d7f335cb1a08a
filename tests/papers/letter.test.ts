/** The letter to another doctor, read back: headings in the order of a clinic letter, a first page read in a minute, nothing left blank. */
import { describe, expect, it } from 'vitest';
import type { LetterPaper } from '#papers/letter/letter-paper.ts';
import { printLetter } from '#papers/letter/print-letter.ts';
import { readPdf, tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { letter } from './letter-papers.ts';
import { cuffExercise, look } from './plan-papers.ts';

const printed = async (of: LetterPaper, over: Partial<typeof look> = {}) => {
  const made = await printLetter(of, { ...look, ...over });
  const read = await readPdf(made.pdf);
  return { ...made, read, first: read.text[0]!, all: read.text.join(' ') };
};

describe('the letter to another doctor', () => {
  it('asks first, then tells, in the order of a clinic letter, all of it tagged', async () => {
    const { read, first } = await printed(letter());
    expect(tagsOf(read.tags, /^H\d$/).map(wholeText)).toEqual([
      'Letter about Maeve Tarrowby',
      'What we ask of you',
      'Diagnoses',
      'Summary',
      'Outcomes',
      'Current dose and limits',
      'Medicines and allergies',
      'Risks',
      'Plan',
      'The patient’s goals',
      'What was not checked',
      'Your reply',
      'The record behind this letter',
      'Exercises, first and present dose',
      'Cautions of the present doses',
      'What was logged',
      'Measured',
      'Screening',
    ]);
    expect(read.untagged).toEqual([]);
    expect(first).toContain('To: Dr Invented');
    expect(first).toContain('born 14 Aug 1958; patient number: 4711');
    expect(first).not.toContain('The record behind');
    expect(first.split(' ').length).toBeLessThanOrEqual(350);
  });

  it('offers the reply that stops a cuff where one is prescribed, and nowhere else', async () => {
    const [one] = letter().exercises;
    if (!one) throw new Error('The letter has no exercise.');
    const withCuff = letter({ exercises: [{ ...one, now: { ...one.now, dose: cuffExercise.dose } }] });
    expect((await printed(withCuff)).all).toContain('Stop the cuff');
    expect((await printed(letter())).all).not.toContain('Stop the cuff');
    expect((await printed(letter())).all).toContain('Medicine changed');
  });

  it('sets first, last and change beside whether it is beyond the error: yes, no or not known', async () => {
    const { read } = await printed(letter());
    const rows = tagsOf(read.tags, /^TR$/).map((row) => row.children.map(wholeText));
    expect(rows).toEqual([
      ['Measure', 'First', 'Last', 'Change', 'Beyond error'],
      [
        '30-second chair stand',
        '9 stands (19 Jan 2026)',
        '12 stands (6 Apr 2026)',
        '+3 stands',
        'yes, better',
      ],
      ['Timed up and go', '11.8 s (19 Jan 2026)', '10.9 s (6 Apr 2026)', '−0.9 s', 'no'],
    ]);
    expect(tagsOf(read.tags, /^TH$/)).toHaveLength(5);
  });

  it('says what is missing and names no rule by its code', async () => {
    const nothing = await printed(
      letter({
        referrer: null,
        patient: { name: 'A B', birthDay: '1960-01-01', patientNumber: null },
        diagnoses: [],
        since: null,
        log: null,
        outcomes: [],
        exercises: [],
        painLimits: [{ joint: 'right-knee', limit: null }],
        mornings: [],
        advised: { eased: 0, paused: 0 },
        decisions: [],
        checks: { screening: null, measured: [], notMeasured: ['Grip strength'] },
      }),
    );
    for (const said of [
      'To: no addressee is named.',
      'DRAFT – not signed',
      'Not signed.',
      'Copies: none.',
      'patient number: not recorded',
      'Nothing is signed for this patient so far.',
      'No exercise is prescribed now.',
      'Nothing was measured a second time, so no change can be named.',
      'No dose is in force.',
      'right knee: no limit is set.',
      'Not reviewed by us.',
      'No next visit is booked in our record.',
      'No goal is recorded.',
      'No screening is on record.',
      'Never measured: Grip strength.',
    ])
      expect(nothing.all).toContain(said);
    expect(nothing.all).not.toMatch(/\b[A-Z]\d\d?\b/);
  });

  it('asks for what a physician has to clear, and to speak about an open warning sign in the patient’s words', async () => {
    const { first } = await printed(
      letter({
        closed: [
          {
            method: 'occlusion',
            code: 'recent-clot',
            from: 'past-clot',
            text: 'A clot within six months',
            clearedBy: 'physician',
            limbs: [],
          },
          {
            method: 'occlusion',
            code: 'bleeding-disorder',
            from: 'clotting-disorder',
            text: 'A bleeding disorder: a clinician decides',
            clearedBy: 'clinician',
            limbs: [{ limb: 'leg', side: 'right' }],
          },
          {
            method: 'occlusion',
            code: 'no-consent',
            from: 'consent',
            text: 'Consent has not been asked for',
            clearedBy: null,
            limbs: [],
          },
        ],
        openSigns: [{ joint: null, flags: ['calf-pain-swelling'], reportedOn: '2026-04-20' }],
        exercises: letter().exercises.map((one) => ({ ...one, today: 'none' as const })),
      }),
    );
    expect(first).toContain('Tell us whether occlusion may be used: A clot within six months.');
    // The other leg may be in work with a cuff: where it is not open is said by its limb.
    expect(first).toContain('Not open: occlusion (right leg). A bleeding disorder: a clinician decides.');
    expect(first).not.toContain('Consent has not been asked for');
    expect(first).toMatch(
      /Speak with us the same day about a warning sign that is open since 20 Apr 2026: “One calf is newly swollen/,
    );
    expect(first).toContain('All exercise rests now.');
    expect(first).not.toContain('the dose stays as it is');
    expect(first).not.toContain('with 5 kg');
  });

  it('holds the notes that were chosen behind its first page, each under its headings', async () => {
    const notes: LetterPaper['notes'] = [
      {
        on: '2026-04-06',
        by: 'Nuala Derravane',
        parts: [
          { part: 'objective', text: 'Knee cool' },
          { part: 'text', text: 'Go on.' },
        ],
      },
    ];
    const { all, first } = await printed(letter({ notes }));
    expect(all).toContain('6 Apr 2026, Nuala Derravane: Objective: Knee cool. Go on.');
    expect(first).not.toContain('Knee cool');
    expect((await printed(letter())).all).not.toContain('Notes chosen');
  });

  it('is the same twice, and on US Letter in large type it keeps the record on a page of its own', async () => {
    const [once, again] = await Promise.all([printLetter(letter(), look), printLetter(letter(), look)]);
    expect(Buffer.from(once.pdf).equals(Buffer.from(again.pdf))).toBe(true);
    const { read } = await printed(letter(), { paper: 'letter', isLarge: true });
    expect([read.size, read.untagged]).toEqual([[216, 279], []]);
    const page = read.text.findIndex((text) => text.includes('The record behind this letter'));
    expect(read.text[page]?.startsWith('The record behind this letter')).toBe(true);
  });
});
