/** The sheet for the time after care says the same in every language: its lines, its figures, its signs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import type { DocumentFacts, DocumentItem } from '#core/episode/documents/document-facts.ts';
import type { CareDocument } from '#core/episode/documents/document-words.ts';
import { selfManagementOf } from '#core/episode/documents/self-management.ts';
import { joints } from '#core/exercises/joints.ts';
import { alwaysCautions } from '#core/prescribing/cautions/always.ts';
import { everyLanguage } from '#messages/every-language.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { selfManagementIn } from '#messages/papers/self-management.ts';
import { sentenceRows } from '#messages/sentence-rows.ts';
import { anyDose } from './german/any-dose.ts';
import { figuresOf, otherTags } from './pairs.ts';

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

const baseline = fc
  .record({
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
    followedFrom: fc.option(day),
  })
  .map(({ followedFrom, ...row }) => (followedFrom ? { ...row, tightenedFrom: followedFrom } : row));

const facts: fc.Arbitrary<DocumentFacts> = fc
  .record({
    birthDay: day,
    endedOn: fc.option(day),
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
      urgentNumber: '116 117',
      monitoringHours: [{ days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '09:00', to: '17:30' }],
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
    end: endedOn === null ? null : { on: endedOn, state: 'discharged', reason: 'so', by: 'Closer' },
    log: {} as DocumentFacts['log'],
    decisions: [],
    limits: [],
    checks: {} as DocumentFacts['checks'],
    outcomes: [],
    sides: [],
  }));

const linesOf = (document: CareDocument): readonly string[] => [
  ...document.from.slice(1),
  document.about,
  document.title,
  ...document.parts.flatMap(({ title, lines, advice = [] }) => [title, ...lines, ...advice]),
  document.adviceTitle,
  document.signature,
];

const sheetIn = (tag: LanguageTag, of: DocumentFacts): CareDocument =>
  selfManagementIn(tag, selfManagementOf(of)!);

/** What stands between the values of a sentence. */
const fixedParts = (text: string): readonly string[] => text.split(/\{[^}]*\}/);

const says = (text: string, line: string): boolean =>
  fixedParts(text).every((part) => line.toLowerCase().includes(part.toLowerCase()));

describe('the sheet after care', () => {
  it.each(otherTags)('in %s has the lines and the figures of English, none left in it', (tag) => {
    fc.assert(
      fc.property(facts, (drawn) => {
        const [english, other] = [linesOf(sheetIn('en', drawn)), linesOf(sheetIn(tag, drawn))];
        expect(other).toHaveLength(english.length);
        for (const [place, text] of english.entries()) {
          const line = other[place] ?? '';
          expect(`${text} ${line}`).not.toMatch(/[{}]|undefined/);
          expect([text, line === text]).toEqual([text, false]);
          expect([text, ...figuresOf(line)]).toEqual([text, ...figuresOf(text)]);
        }
      }),
      { seed: 20260131, numRuns: 300 },
    );
  });

  it('uses every sentence there is for it', () => {
    const drawn = fc.sample(facts, { seed: 20260131, numRuns: 300 });
    const lines = [...new Set(drawn.flatMap((one) => linesOf(sheetIn('en', one))))];
    const sentences = sentenceRows(everyLanguage.en).filter(({ area }) => area === 'self-management');
    expect(sentences.length).toBeGreaterThan(30);
    expect(sentences.filter(({ text }) => !lines.some((line) => says(text, line)))).toEqual([]);
  });

  it('lists every warning sign, each under the same call in German as in English', () => {
    const [drawn] = fc.sample(facts, { seed: 20260131, numRuns: 1 });
    const signs = sheetIn('de', drawn!).parts.filter(({ title }) => /^Hören Sie auf/.test(title));
    expect(signs.map(({ title }) => title)).toEqual([
      'Hören Sie auf und rufen Sie sofort 112 an',
      'Hören Sie auf und sprechen Sie noch am selben Tag mit einer Physiotherapeutin oder einem Physiotherapeuten: 0711 55',
      'Hören Sie auf und rufen Sie die Praxis an: 0711 55',
    ]);
    expect(signs.flatMap(({ lines }) => lines)).toEqual(
      redFlags.map((flag) => `${everyLanguage.de.pages[`flag.${flag}`]}.`),
    );
  });

  it('is written for nobody who was handed to others', () => {
    const [drawn] = fc.sample(facts, { seed: 20260131, numRuns: 1 });
    expect(
      selfManagementOf({
        ...drawn!,
        end: { on: '2026-01-31', state: 'transferred', reason: 'so', by: 'Closer' },
      }),
    ).toBeNull();
  });
});
