/** The papers of parts, read back: headings in order, cautions, signs and numbers wherever exercise is spoken of. */
import { describe, expect, it } from 'vitest';
import { redFlagClasses } from '#core/decision/facts/facts.ts';
import { cautionText } from '#messages/cautions.ts';
import { pageWord } from '#messages/page-words.ts';
import { dischargeSheet, selfManagementSheet } from '#papers/end-of-care/end-of-care-sheets.ts';
import { flareNoteSheet } from '#papers/flare-note/flare-note-sheet.ts';
import { handoverSheet } from '#papers/handover/handover-sheet.ts';
import { printSheet } from '#papers/sheet/print-sheet.ts';
import { tagsOf, wholeText } from '#tests/papers/read-pdf.ts';
import { careFacts } from './care-facts.ts';
import { kneeCaution } from './letter-papers.ts';
import { look } from './plan-papers.ts';
import { hostile, inert, printed } from './print-and-read.ts';
import { changed, flareNote, handover } from './sheet-papers.ts';

const german = { ...look, language: 'de' } as const;
const overruled = (reason: string) =>
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
  });

const sheets = [
  {
    kind: 'handover',
    language: 'en',
    caution: kneeCaution.text,
    make: (reason = 'Seen') => handoverSheet(overruled(reason), look),
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
    kind: 'handover in German',
    language: 'de',
    caution: cautionText(kneeCaution.patient).de,
    make: (reason = 'Seen') => handoverSheet(overruled(reason), german),
    headings: [
      'Übergabe',
      'Behandlung',
      'Dringend',
      'Pausen und wer sich darum kümmert',
      'Grenzen',
      'Methoden, die nicht möglich sind, und warum',
      'Die letzten drei Entscheidungen',
      'Anders entschieden',
      'Noch nicht unterschrieben',
      'Was gilt',
      'Vorsichtshinweise zu den jetzigen Dosen (Wortlaut für Behandelte)',
      'Warnzeichen, bei denen sofort aufgehört wird (Wortlaut für Behandelte)',
    ],
  },
  {
    kind: 'flare-note',
    language: 'en',
    caution: kneeCaution.text,
    make: (remark = 'skipped') =>
      flareNoteSheet(
        flareNote({
          events: [changed(remark)],
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
  {
    kind: 'discharge',
    language: 'en',
    caution: kneeCaution.text,
    make: (reason = 'Agreed') => dischargeSheet(careFacts(reason), '2026-05-04', look),
    headings: [
      'Letter at the end of care',
      'Care and period',
      'Exercises, first and last dose',
      'Outcomes, first and last',
      'What was logged',
      'Last decision for each joint',
      'Limits when care ended',
      'What was checked, and what was not',
      'Cautions of the last signed doses',
      'Warning signs on which the patient stops, in the patient’s words',
      'Who decides',
    ],
  },
  {
    kind: 'discharge in German',
    language: 'de',
    caution: cautionText(kneeCaution.patient).de,
    make: (reason = 'Agreed') => dischargeSheet(careFacts(reason), '2026-05-04', german),
    headings: [
      'Abschlussbericht',
      'Behandlung und Zeitraum',
      'Übungen, erste und letzte Dosis',
      'Messungen, erste und letzte',
      'Was eingetragen wurde',
      'Letzte Entscheidung für jedes Gelenk',
      'Grenzen bei Behandlungsende',
      'Was geprüft wurde und was nicht',
      'Vorsichtshinweise zu den zuletzt unterschriebenen Dosen (Wortlaut für Behandelte)',
      'Warnzeichen, bei denen sofort aufgehört wird (Wortlaut für Behandelte)',
      'Wer entscheidet',
    ],
  },
  {
    kind: 'self-management',
    language: 'en',
    // In the patient’s words.
    caution: cautionText(kneeCaution.patient).en,
    make: (by = 'Signer One') => selfManagementSheet(careFacts('Agreed', by), look)!,
    headings: [
      'What to do on your own',
      'Straighten the knee, sitting',
      'Your right knee',
      'Stop and ring 112 at once',
      'Stop and speak with a clinician the same day: 020 913 0140',
      'Stop and ring the clinic: 020 913 0140',
      'Who is there for you',
    ],
  },
] as const;

describe.each(sheets)('the $kind on paper', ({ make, headings, caution, language }) => {
  it.each([
    { paper: 'a4', isLarge: false, size: [210, 297] },
    { paper: 'letter', isLarge: true, size: [216, 279] },
  ] as const)(
    'on $paper, large type $isLarge: headings in order, caution, signs and numbers, all of it tagged',
    async ({ size, ...as }) => {
      const { read, all } = await printed(make(), { ...as, language });
      expect(tagsOf(read.tags, /^H\d$/).map(wholeText)).toEqual(headings);
      expect(read.untagged).toEqual([]);
      expect(read.language?.slice(0, 2)).toBe(language);
      expect(read.size).toEqual(size);
      expect(all).toContain(caution);
      for (const number of ['112', '020 913 0140', '116 117']) expect(all).toContain(number);
      for (const flag of redFlagClasses.emergency) expect(all).toContain(pageWord(language, `flag.${flag}`));
    },
  );

  it('gives the same bytes twice', async () => {
    const [once, again] = await Promise.all([printSheet(make(), look), printSheet(make(), look)]);
    expect(Buffer.from(once.pdf).equals(Buffer.from(again.pdf))).toBe(true);
  });

  it('keeps what somebody typed as letters, and names what it cannot print', async () => {
    const { all, unprintable } = await printed(make(hostile));
    expect(all).toContain(inert);
    expect(unprintable).toEqual(['U+202E', 'U+1F9B5']);
    expect(all).toContain('U+202E, U+1F9B5');
  });
});

describe('the handover on paper', () => {
  it('gives no dose of what rests, the easier session alone of what is eased, and who signed each', async () => {
    const [one] = handover().inForce;
    const resting = await printed(handoverSheet(handover({ inForce: [{ ...one!, today: 'none' }] }), look));
    expect(resting.all).toContain('Straighten the knee, sitting: rests now. Signed by Nuala Derravane.');
    expect(resting.all).not.toContain('sets of');
    const eased = await printed(handoverSheet(handover({ inForce: [{ ...one!, today: 'bad-day' }] }), look));
    expect(eased.all).toContain('only the easier session now. 2 sets');
    expect(eased.all).not.toContain('3 sets');
  });

  it('says what there is none of', async () => {
    const { all } = await printed(handoverSheet(handover({ inForce: [], coveringClinician: null }), look));
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
