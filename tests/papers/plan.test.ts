/** The plan on paper, read back by an outside reader: what must stand there, in tags that can be read aloud. */
import { describe, expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { languages } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import { asTyped } from '#messages/text.ts';
import type { Look } from '#papers/look.ts';
import { printPlan } from '#papers/plan/print-plan.ts';
import { readPdf, tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { cautions, cuffExercise, exercise, look, plan } from './plan-papers.ts';

const printed = async (of = plan(), over: Partial<Look> = {}) => {
  const made = await printPlan(of, { ...look, ...over });
  const read = await readPdf(made.pdf);
  return { ...made, read, all: read.text.join(' ').replaceAll('\u00a0', ' ') };
};

const looks = languages.flatMap(({ tag }) =>
  (['a4', 'letter'] as const).flatMap((paper) =>
    [false, true].map((isLarge) => ({ language: tag, paper, isLarge })),
  ),
);

/** Letters and a box on a page without a tree. */
const untaggedPdf = `%PDF-1.4
1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj
2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj
3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Contents 4 0 R/Resources<</Font<</F<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>>>>>>>endobj
4 0 obj<</Length 50>>stream
BT /F 12 Tf 50 50 Td (loose) Tj ET 0 0 9 9 re f   
endstream endobj
trailer<</Root 1 0 R>>`;

describe('the reader', () => {
  it('would find letters and marks outside the tree', async () => {
    const { untagged } = await readPdf(Buffer.from(untaggedPdf));
    expect(untagged).toEqual(['loose', '2 marks outside the tree']);
  });
});

describe('the plan on paper', () => {
  it.each(looks)(
    '$language, $paper, large type $isLarge: every caution, warning sign and number, all of it tagged',
    async (as) => {
      const { read, all } = await printed(plan(), as);
      const { language } = as;
      for (const text of cautions) expect(all).toContain(text[language]);
      for (const flag of redFlags) expect(all).toContain(pageWord(language, `flag.${flag}`));
      for (const number of ['112', '020 913 0140', '116 117']) expect(all).toContain(number);
      expect(all).toContain(
        pageWord(language, 'pain.limit', {
          where: pageWord(language, 'pain.in', { joint: 'right-knee' }),
          limit: 5,
        }),
      );
      expect(all).toContain('Nuala Derravane');
      expect(all).toContain(everyLanguage[language].sentences['plan-paper']['holds-until'] as string);
      expect(read.untagged).toEqual([]);
      expect(read.size).toEqual(as.paper === 'a4' ? [210, 297] : [216, 279]);
      expect(read.language?.slice(0, 2)).toBe(language);
      expect(read.metadata).toContain('<pdfuaid:part>1</pdfuaid:part>');
      expect(read.pages).toBeLessThanOrEqual(as.isLarge ? 2 : 1);
      const headings = tagsOf(read.tags, /^H\d$/).map(({ role }) => Number(role.slice(1)));
      expect(headings[0]).toBe(1);
      for (const [at, level] of headings.entries())
        expect(level).toBeLessThanOrEqual((headings[at - 1] ?? 0) + 1);
    },
  );

  it('has a head over each day, a box on each day of an exercise, and a drawing that is said', async () => {
    const { read } = await printed();
    const heads = tagsOf(read.tags, /^TH$/).map(wholeText);
    expect(heads).toEqual([
      'What to do',
      'Mon 20',
      'Tue 21',
      'Wed 22',
      'Thu 23',
      'Fri 24',
      'Sat 25',
      'Sun 26',
    ]);
    const rows = tagsOf(tagsOf(read.tags, /^TBody$/), /^TR$/).map((row) => row.children.map(wholeText));
    expect(rows[0]?.slice(1)).toEqual(['☐', '–', '☐', '–', '☐', '–', '–']);
    expect(rows[1]?.slice(1)).toEqual(['–', '☐', '–', '–', '–', '–', '–']);
    // Worst pain, pain in the morning and stiffness of each joint that is followed.
    expect(rows).toHaveLength(2 + 3 * 2);
    const drawings = tagsOf(read.tags, /^Figure$/);
    expect(drawings).toHaveLength(2);
    expect(drawings[1]?.alt).toContain(pageWord('en', 'figure.with-cuff'));
  });

  it('is a page a week, each with all of it, and two in large type', async () => {
    const weeks = ['2026-04-20', '2026-04-27', '2026-05-04'];
    const { read } = await printed(plan({ weeks }));
    expect(read.pages).toBe(3);
    for (const page of read.text) expect(page).toContain(cautions[2]!.en);
    expect(tagsOf(read.tags, /^H1$/)).toHaveLength(3);
    expect((await printed(plan({ weeks }), { isLarge: true })).pages).toBeLessThanOrEqual(6);
  });

  it.each(languages.map(({ tag }) => tag))(
    'in large type in %s sets what to heed no smaller than the dose',
    async (language) => {
      const { read, sizePt } = await printed(plan(), { language, isLarge: true });
      const ptOf = (text: string) =>
        Math.min(...read.runs.filter((run) => run.text.startsWith(text.slice(0, 12))).map(({ pt }) => pt));
      for (const text of [...cautions.map((one) => one[language]), pageWord(language, 'flag.chest-pain')])
        expect([text, ptOf(text)]).toEqual([text, sizePt]);
    },
  );

  it('in large type that no size brings onto two pages is large, and longer', async () => {
    const many = Array.from({ length: 9 }, () => exercise());
    const { pages, sizePt } = await printed(plan({ exercises: many }), { isLarge: true });
    expect(sizePt).toBe(16);
    expect(pages).toBeGreaterThan(2);
  });

  it('gives the same bytes twice, others on another day, and holds no instant of its making', async () => {
    const [first, again] = await Promise.all([printPlan(plan(), look), printPlan(plan(), look)]);
    expect(Buffer.from(first.pdf).equals(Buffer.from(again.pdf))).toBe(true);
    const later = await printPlan(plan(), { ...look, printedOn: '2026-04-21' });
    expect(Buffer.from(first.pdf).equals(Buffer.from(later.pdf))).toBe(false);
    const { metadata } = await readPdf(first.pdf);
    const dates = metadata.match(/\d{4}-\d\d-\d\dT[\d:]+/g) ?? [];
    expect(new Set(dates.map((date) => date.slice(0, 10)))).toEqual(new Set(['2026-04-20']));
  });
});

describe('what the plan leaves is what is printed', () => {
  it('of an exercise that rests no dose and no box, and nothing speaks of doing it', async () => {
    const resting = exercise({ today: 'rest-this-joint' });
    const { all } = await printed(plan({ exercises: [resting], danger: [asTyped('Speak with us first.')] }));
    expect(all).toContain('Speak with us first.');
    expect(all).toContain('Leave this one out until the clinic tells you.');
    expect(all).not.toContain('☐');
    expect(all).not.toContain('3 sets');
    expect(all).not.toContain('How much pain is all right');
  });

  it('of an exercise eased the easier session first, and the whole one only when the clinic says so', async () => {
    const { all } = await printed(plan({ exercises: [exercise({ today: 'bad-day' })] }));
    expect(all).toContain('2 sets of 15 to 25 repetitions with 3 kg');
    expect(all).toContain(
      'The whole session, only when the clinic says so: 3 sets of 15 to 25 repetitions, with 4 kg.',
    );
  });

  it('without anything signed, without a limit for pain and on a break: says so, and never leaves a blank', async () => {
    const nothing = await printed(plan({ exercises: [] }));
    expect(nothing.all).toContain(
      'Nothing is signed for you to do at home now. Ask the clinic: 020 913 0140.',
    );
    const unlimited = await printed(plan({ joints: [{ joint: 'left-hip', acceptablePainLimit: null }] }));
    expect(unlimited.all).toContain('No limit for pain is set for your left hip.');
    expect((await printed(plan({ joints: [] }))).all).toContain('No joint is named to watch.');
    const off = await printed(plan({ isOff: true, exercises: [exercise({ days: [] })] }));
    expect(off.all).toContain('Your care is on a break or has ended.');
    expect(off.all).not.toContain('☐');
  });

  it('days the patient chooses have a box each and say how many; with a clinician beside there is none', async () => {
    const { all } = await printed(plan({ exercises: [exercise({ days: null })] }));
    expect(all.match(/☐/g)).toHaveLength(7);
    expect(all).toContain('3 days a week. Choose the days.');
    const dose = { ...cuffExercise.dose, supervised: true } as typeof cuffExercise.dose;
    const beside = await printed(plan({ exercises: [{ ...cuffExercise, dose }] }));
    expect(beside.all).not.toContain('☐');
    expect(beside.all).toContain('Only with a clinician beside you, never alone');
    const machine = { id: 'm', name: 'Leg press' };
    const onMachine = { ...exercise().dose, machine } as ReturnType<typeof exercise>['dose'];
    const there = await printed(plan({ exercises: [exercise({ days: null, dose: onMachine })] }));
    expect(there.all).not.toContain('☐');
    expect(there.all).toContain('at the clinic: Leg press');
    expect(there.all).toContain('Only on days agreed with your clinician.');
  });
});

describe('what somebody typed', () => {
  const hostile =
    '#read("/etc/passwd") *bold* _x_ $y$ = h #image("a.png") @preview \\u{41} <tag> // "quoted"';

  it('stays letters, whatever a typesetter would make of it', async () => {
    const { all } = await printed(plan({ exercises: [exercise({ cautions: [asTyped(hostile)] })] }));
    expect(all).toContain(hostile);
  });

  it('is printed in Greek, Cyrillic, Arabic, Hebrew and every Latin', async () => {
    const names = ['Łucja Őri Ṩ', 'Ελένη', 'Ольга', 'مريم', 'מרים'];
    for (const name of names) {
      const made = await printPlan(plan({ patient: { name, birthDay: '1960-01-01' } }), look);
      expect([name, made.unprintable]).toEqual([name, []]);
    }
  });

  it('that no letters exist for is marked and named, and so is what would turn the writing round', async () => {
    const name = 'A\u{1F9B5}B\u202eC\u0007D日';
    const { all, unprintable } = await printed(plan({ patient: { name, birthDay: '1960-01-01' } }));
    expect(unprintable).toEqual(['U+1F9B5', 'U+202E', 'U+0007', 'U+65E5']);
    expect(all).toContain('A▯B▯C▯D▯');
    const german = await printed(plan({ patient: { name, birthDay: '1960-01-01' } }), { language: 'de' });
    for (const said of [all, german.all]) expect(said).toContain('U+1F9B5, U+202E, U+0007, U+65E5');
  });

  it('of ten thousand letters without a space is printed whole, on as many pages as it takes', async () => {
    const { all, pages } = await printed(
      plan({ exercises: [exercise({ cautions: [asTyped('x'.repeat(10_000))] })] }),
    );
    expect(all.replace(/[^x]/g, '').length).toBeGreaterThanOrEqual(10_000);
    expect(pages).toBeGreaterThan(1);
  });
});
