/** A letter with its frame: to whom, whose words, signed or void; and whatever was typed into it inert. */
import { describe, expect, it } from 'vitest';
import { letterSpeech } from '#messages/papers/colleague-words.ts';
import { letterWords } from '#papers/letter/letter-data.ts';
import { type LetterFrame, unframed, type Voiding } from '#papers/letter/letter-frame.ts';
import type { LetterPaper } from '#papers/letter/letter-paper.ts';
import { printWords } from '#papers/letter/print-letter.ts';
import { readPdf, tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { letter } from './letter-papers.ts';
import { look } from './plan-papers.ts';

const frame = (over: Partial<LetterFrame> = {}): LetterFrame => ({
  ...unframed(null),
  addressee: {
    name: 'Dr Ada Verrin',
    role: 'general practitioner',
    organisation: 'Hill Practice',
    address: '1 Hill Road\nArdvellin',
  },
  signed: { name: 'Nuala Derravane', role: 'physiotherapist', registration: 'PT 123' },
  ...over,
});

const wordsOf = (
  { framed = {}, of = {} }: { framed?: Partial<LetterFrame>; of?: Partial<LetterPaper> } = {},
  tag: 'en' | 'de' = 'en',
) => letterWords(letter(of), frame(framed), letterSpeech(tag), '2026-04-20');

const read = async (words: ReturnType<typeof wordsOf>, voided: Voiding | null = null, over = {}) => {
  const made = await printWords(words, { ...look, ...over }, voided);
  const paper = await readPdf(made.pdf);
  return { ...made, paper, first: paper.text[0]!, all: paper.text.join(' ') };
};

const hostile = '#read("/etc/passwd") *bold* $y$ <tag> \u202eleft \u{1F9B5}';
const inert = '#read("/etc/passwd") *bold* $y$ <tag> ▯left ▯';

describe('a kept letter', () => {
  it('names to whom it goes, who has copies, and who signed in which role, and no draft', async () => {
    const framed = { copies: ['Dr Second', 'Ward 3'], toPatient: true };
    const { first, paper } = await read(wordsOf({ framed }));
    for (const said of [
      'To: Dr Ada Verrin, general practitioner',
      'Hill Practice, 1 Hill Road, Ardvellin',
      'Copies: Dr Second; Ward 3; the patient',
      'Signed: Nuala Derravane, physiotherapist, registration number PT 123, 20 Apr 2026',
    ])
      expect(first).toContain(said);
    expect(paper.text.join(' ')).not.toContain('DRAFT');
    expect(paper.untagged).toEqual([]);
    const bare = await read(
      wordsOf({ framed: { signed: { name: 'N D', role: 'physiotherapist', registration: null } } }),
    );
    expect(bare.first).toContain('registration number not recorded');
  });

  it('is the same words on any later day: only the day it was printed on differs', async () => {
    const words = wordsOf();
    const [once, again] = await Promise.all([
      printWords(words, look),
      printWords(structuredClone(words), look),
    ]);
    expect(Buffer.from(once.pdf).equals(Buffer.from(again.pdf))).toBe(true);
    const texts = async (on: string) => (await read(words, null, { printedOn: on })).paper;
    const [today, later] = [await texts('2026-04-20'), await texts('2026-06-01')];
    const told = (paper: typeof today) => tagsOf(paper.tags, /./).map(wholeText).join('\n');
    expect(told(later)).toBe(told(today));
  });

  it('says on every page of a void one that it is, and in the text who voided it and why', async () => {
    const voided = { on: '2026-05-04', by: 'Nuala Derravane', reason: 'Wrong patient.' };
    const { all, paper } = await read(wordsOf(), voided);
    expect(all).toContain(
      'VOID since 4 May 2026, by Nuala Derravane: Wrong patient. Do not use this letter.',
    );
    expect(paper.edges.filter((text) => text.includes('VOID'))).toHaveLength(paper.pages);
    expect(paper.untagged).toEqual([]);
    expect((await read(wordsOf())).paper.edges.join()).not.toContain('VOID');
  });

  it('marks a sentence of the clinician’s own as such, and takes no ask, caution or risk out with it', async () => {
    const own = Object.fromEntries(
      (['care', 'outcomes', 'course', 'now'] as const).map((part) => [
        part,
        { text: `Mine about ${part}.`, instead: '', by: 'Nuala Derravane' },
      ]),
    );
    const of: Partial<LetterPaper> = {
      openSigns: [{ joint: null, flags: ['chest-pain', 'locked-joint'], reportedOn: '2026-04-20' }],
      isPaused: true,
      exercises: letter().exercises.map((one) => ({ ...one, today: 'none' as const })),
    };
    const { first, all } = await read(wordsOf({ framed: { own }, of }));
    expect(first).toContain('Mine about now. *');
    expect(first).toContain(
      '* In the words of Nuala Derravane; every other sentence is made from the record.',
    );
    expect(first).not.toContain('39 sessions and 91 mornings');
    for (const kept of [
      'Speak with us at once (emergency)',
      'A warning sign is open',
      'Exercise is paused',
      'rests now.',
    ])
      expect(first).toContain(kept);
    expect(all).toContain('Knee: swelling the next morning counts as an answer.');
  });

  it('keeps whatever was typed into its fields as letters, of any length', async () => {
    const addressee = { name: hostile, role: hostile, organisation: hostile, address: hostile };
    const long = `${hostile} ${'x'.repeat(10_000)}`;
    const own = { now: { text: long, instead: '', by: hostile } };
    const framed: Partial<LetterFrame> = {
      addressee,
      own,
      copies: [hostile],
      signed: { name: 'N D', role: hostile, registration: hostile },
    };
    const made = await read(wordsOf({ framed }), { on: '2026-05-04', by: 'N D', reason: hostile });
    expect(made.unprintable).toEqual(['U+202E', 'U+1F9B5']);
    expect(made.all.split(inert).length - 1).toBeGreaterThanOrEqual(8);
    expect(made.all.split('x').length).toBeGreaterThan(10_000);
    expect(made.paper.untagged).toEqual([]);
  });
});

describe('what a letter asks', () => {
  it.each([
    ['chest-pain', 'Speak with us at once (emergency)'],
    ['calf-pain-swelling', 'Speak with us the same day'],
    ['locked-joint', 'Speak with us, not urgently,'],
  ] as const)('says of an open %s how urgent it is', async (flag, said) => {
    const openSigns = [{ joint: null, flags: [flag], reportedOn: '2026-04-20' }];
    expect((await read(wordsOf({ of: { openSigns } }))).first).toContain(said);
  });

  it('is never nothing where a joint was over its usual pain for weeks', async () => {
    const overUsual = [{ joint: 'left-knee' as const, over: 6, answered: 14, top: 3 }];
    const { first } = await read(wordsOf({ of: { overUsual } }));
    expect(first).toContain(
      'Tell us whether another cause should be looked for (left knee): morning pain was over its usual (3 of 10) on 6 of 14 mornings in two weeks.',
    );
    expect(first).not.toContain('Nothing; for your information.');
  });

  it('tells who cleared a finding, when and why, on which limb', async () => {
    const cleared: LetterPaper['cleared'] = [
      {
        method: 'occlusion',
        limbs: [{ limb: 'leg', side: 'left' }],
        finding: { code: 'c', from: 'clotting-or-bleeding-disorder', text: 'A clinician decides.' },
        reason: 'Her own clotting is normal',
        by: 'Nuala Derravane',
        on: '2026-03-02',
      },
    ];
    expect((await read(wordsOf({ of: { cleared } }))).first).toContain(
      'Cleared by Nuala Derravane on 2 Mar 2026: occlusion (left leg), Clotting or bleeding disorder, own or family. Reason: Her own clotting is normal.',
    );
  });
});
