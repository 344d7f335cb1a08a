/** The note about a flare, read back, in both languages. */
import { describe, expect, it } from 'vitest';
import { flareNoteSheet } from '#papers/flare-note/flare-note-sheet.ts';
import { tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { look } from './plan-papers.ts';
import { printed } from './print-and-read.ts';
import { changed, flareNote } from './sheet-papers.ts';

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

  it('of more than two joints tells the mornings of those that flared, names the others, and says how tired', () => {
    const [first] = flareNote().mornings;
    const note = flareNoteSheet(
      flareNote({
        joints: [...flareNote().joints, { joint: 'left-knee', flare: null }],
        mornings: [
          { ...first!, day: '2026-04-19', fatigue: 6, otherJoint: 'worse' },
          { ...first!, fatigue: null, otherJoint: 'not-worse' },
        ],
      }),
      look,
    );
    const part = note.parts.find(({ title }) => title === 'The last fourteen days, morning answers')!;
    expect(part.lines).toEqual([
      'No flare was reported of right hand, left knee; their mornings are in the record.',
      'Tiredness in these mornings, 0 to 10, oldest first: 6, not answered.',
      'A joint that is not followed was worse than usual on 19 Apr 2026.',
    ]);
    const told = 'table' in part ? part.table?.rows.map((row) => row[1]) : [];
    expect(told).toEqual(['right wrist', 'right wrist']);
  });

  it.each([
    ['en', 'Course of steroid to 12 Apr 2026, tapered', 'Biologic: a dose was missed'],
    ['de', 'Kortisonkur bis 12.04.2026, ausschleichend', 'Biologikum: einmal ausgelassen'],
  ] as const)(
    'in %s tells a course with its last day and a missed dose by its medicine',
    (language, course, missed) => {
      const note = flareNoteSheet(
        flareNote({
          events: [
            { ...changed('as told'), kind: 'steroid-course', lastDay: '2026-04-12', courseForm: 'taper' },
            {
              ...changed('as told'),
              kind: 'missed-dose',
              medicine: { act: null, medicineClass: 'biologic' },
            },
          ],
        }),
        { ...look, language },
      );
      const all = note.parts.flatMap(({ lines }) => lines).join(' ');
      expect(all).toContain(course);
      expect(all).toContain(missed);
    },
  );

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

  it('says the same in German, and leaves typed words as they are', async () => {
    const german = { ...look, language: 'de' } as const;
    const { all, read } = await printed(flareNoteSheet(flareNote(), german), german);
    for (const said of [
      'Mitteilung über einen Schub',
      'Bitte teilen Sie uns mit, ob sich an der Behandlung der Arthritis etwas ändert',
      'Handgelenk rechts: gemeldet seit 16.04.2026, zuletzt am 20.04.2026, 5 Tage.',
      'Gelenkzählung vom 16.03.2026: 4 druckschmerzhaft und 2 geschwollen von 28.',
      'JAK-Hemmer, Biologikum oder kürzlich Chinolon: ja; Biologikum (beantwortet am 16.03.2026).',
      '02.04.2026: Ein Medikament wurde geändert: „skipped two weeks“.',
      'zurzeit nur das leichtere Training.',
      'Sofort 112 anrufen',
    ])
      expect(all).toContain(said);
    expect(read.language?.slice(0, 2)).toBe('de');
    expect(read.untagged).toEqual([]);
  });
});
