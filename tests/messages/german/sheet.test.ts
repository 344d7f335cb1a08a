/** The sheet for the time after care is told in German line by line, with the same figures and signs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import type { DocumentFacts, DocumentItem } from '#core/episode/documents/document-facts.ts';
import type { CareDocument } from '#core/episode/documents/document-words.ts';
import { joints } from '#core/exercises/joints.ts';
import { alwaysCautions } from '#core/prescribing/cautions/always.ts';
import { careGerman } from '#messages/de/pages/care.ts';
import { summaryInWords } from '#ui/clinician/documents/document-in-words.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { summarySentences } from '#ui/language/bridge/sentences/self-management.ts';
import { says } from '../german-sentences.ts';
import { anyDose } from './any-dose.ts';
import { wrongWith } from './left-in-english.ts';

const day = fc
  .tuple(
    fc.integer({ min: 2024, max: 2027 }),
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 1, max: 28 }),
  )
  .map(([year, month, date]) => `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`);

const held = fc.constantFrom<DocumentItem['suspended']>(
  null,
  'everything-rests',
  'joint-rests',
  'easier-only',
);

const line: fc.Arbitrary<DocumentItem> = fc
  .record({ dose: anyDose, badDay: anyDose, signedOn: day, atEnd: fc.boolean(), suspended: held })
  .map(({ dose, badDay, signedOn, ...rest }) => {
    const last = {
      ...{ dose, badDay, signedOn },
      joints: [],
      cautions: alwaysCautions,
      signedName: 'Dr. Ines Roth',
      endedOn: null,
    };
    return { itemId: 'l', first: last, last, ...rest };
  });

const score = fc.integer({ min: 0, max: 20 }).map((halves) => halves / 2);

const baseline = fc.record({
  joint: fc.constantFrom(...joints),
  usualPain: fc.option(score),
  usualPainTop: fc.option(score),
  acceptablePainLimit: score,
  usualStiffnessMinutes: fc.integer({ min: 0, max: 120 }),
  usualSwelling: fc.constantFrom('none' as const, 'slight' as const),
  usualEffusion: fc.constant('zero' as const),
  usualFatigue: fc.constant(null),
  setOn: day,
  setBy: fc.constant('Kemal Yıldız'),
  dueForReview: fc.boolean(),
});

const facts: fc.Arbitrary<DocumentFacts> = fc
  .record({
    birthDay: day,
    endedOn: day,
    careGoesOn: fc.boolean(),
    lines: fc.array(line, { maxLength: 3 }),
    followed: fc.uniqueArray(fc.constantFrom(...joints), { maxLength: 2 }),
    baselines: fc.uniqueArray(baseline, { selector: ({ joint }) => joint, maxLength: 20 }),
  })
  .map(({ birthDay, endedOn, followed, ...rest }) => ({
    ...rest,
    clinic: {
      name: 'Praxis Nord',
      phone: '0711 55',
      emergencyNumber: '112',
      monitoringHours: 'werktags 9 bis 17',
    },
    patient: { name: 'Mira Sol', birthDay },
    episode: {
      id: 'e',
      diagnoses: [],
      joints: followed,
      followedJoints: followed,
      goals: [],
      referrer: null,
      contacts: [],
      changes: [],
    },
    from: '2024-01-01',
    end: { on: endedOn, state: 'discharged', reason: 'so', by: 'Closer' },
    log: {} as DocumentFacts['log'],
    decisions: [],
    limits: [],
    checks: {} as DocumentFacts['checks'],
  }));

const linesOf = (document: CareDocument | null): readonly string[] =>
  document === null
    ? []
    : [
        ...document.from.slice(1),
        document.about,
        document.title,
        ...document.parts.flatMap(({ title, lines, advice = [] }) => [title, ...lines, ...advice]),
      ];

/** What is of the clinic's own making stands in both languages alike. */
const isOwn = (text: string): boolean => text === 'Praxis Nord';

const around = ['Advice of the clinic', 'Read and signed by the clinician, with name and date:'];

describe('the sheet after care in German', () => {
  it('leaves no line in English, whatever was on record, and uses the whole file', () => {
    const said = new Set(around);
    fc.assert(
      fc.property(facts, (drawn) => {
        const [english, german] = [
          linesOf(summaryInWords(drawn)),
          linesOf(summaryInWords(drawn, translateToGerman, 'de')),
        ];
        expect(german).toHaveLength(english.length);
        for (const [place, text] of english.entries()) {
          said.add(text);
          if (!isOwn(text)) expect(wrongWith(text, german[place] ?? '')).toBeNull();
        }
      }),
      { seed: 20260131, numRuns: 300 },
    );
    const parts = [...said].flatMap((text) => [
      text,
      ...text.split(/(?:born|on|swelling:) (?=\S)/).map((part) => part.replace(/\.$/, '')),
    ]);
    expect(Object.keys(summarySentences).filter((one) => !parts.some((text) => says(one, text)))).toEqual([]);
  });

  it('lists every warning sign, each under the same call as in English', () => {
    const [drawn] = fc.sample(facts, { seed: 20260131, numRuns: 1 });
    const document = summaryInWords(drawn!, translateToGerman, 'de');
    const signs = (document?.parts ?? []).filter(({ title }) => /^Hören Sie auf/.test(title));
    expect(signs.map(({ title }) => title)).toEqual([
      'Hören Sie auf und rufen Sie sofort 112 an',
      'Hören Sie auf und sprechen Sie noch am selben Tag mit einer Fachperson: 0711 55',
      'Hören Sie auf und rufen Sie die Praxis an: 0711 55',
    ]);
    expect(signs.flatMap(({ lines }) => lines)).toEqual(
      redFlags.map((flag) => `${careGerman[`flag.${flag}`]}.`),
    );
  });

  it('is written for nobody who was handed to others', () => {
    const [drawn] = fc.sample(facts, { seed: 20260131, numRuns: 1 });
    expect(
      summaryInWords({ ...drawn!, end: { ...drawn!.end, state: 'transferred' } }, translateToGerman, 'de'),
    ).toBeNull();
  });
});
