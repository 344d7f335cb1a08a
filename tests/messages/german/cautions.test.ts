/** Every caution in German: what the core can make, enumerated from its tables and from what it makes. */
import { describe, expect, it } from 'vitest';
import { limitCautions } from '#core/episode/limit-bounds.ts';
import { exercises } from '#core/exercises/catalogue.ts';
import { exerciseCautions } from '#core/exercises/cautions.ts';
import { joints } from '#core/exercises/joints.ts';
import { screeningWords } from '#core/prescribing/cautions/from-screening.ts';
import { occlusionChecks } from '#core/prescribing/occlusion/checks.ts';
import type { Limit } from '#core/record/record.ts';
import { allYes, cautions, doses } from '#tests/core/prescribing/cautions/doses.ts';
import { screeningWith } from '#tests/core/screening/answers.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { sentenceFiles } from '#ui/language/bridge/sentences.ts';
import { figuresOf, isCountedAlike, longParts, partsOf, says, sentencesOf } from '../german-sentences.ts';

const kinds = ['weight-bearing', 'range', 'load-limit', 'no-impact'] as const;

const limits: readonly Limit[] = joints.flatMap((joint) =>
  kinds.map((kind) => ({ joint, kind, limitKg: 5, from: '2026-01-01', to: null, author: 'Dr. Ines Roth' })),
);

/** Both answers of every screening item, each dose, with nothing measured: all that can be said is said. */
const made = [
  ...doses.flatMap((dose) =>
    [
      screeningWith(allYes),
      screeningWith(allYes.map((one) => ({ ...one, answer: 'not-known' as const }))),
      null,
    ].flatMap((screening) => cautions({ dose, screening, joints, exerciseCautions })),
  ),
  ...exercises.flatMap(({ id }) => limitCautions(limits, { exerciseId: id, side: 'both' }, '2026-02-01')),
  ...occlusionChecks,
  ...Object.values(screeningWords),
];
const texts = [...new Set(made.map(({ patientText }) => patientText))];
const german = sentencesOf('cautions');
const pairs = Object.entries(german);

describe('a caution in German', () => {
  it('is said in German, whatever brings it', () => {
    expect(texts.length).toBeGreaterThan(150);
    expect(texts.filter((text) => translateToGerman(text) === text)).toEqual([]);
  });

  it('leaves no part of it in English', () => {
    const english = /\b(the|you|your|and|or|of|if|not|with|stop|limit)\b/i;
    expect(texts.map(translateToGerman).filter((told) => english.test(told))).toEqual([]);
  });

  it('names the joint and who set it where a limit stands', () => {
    expect(
      translateToGerman('There is a limit for your left knee: load. Keep to it as Dr. Ines Roth told you.'),
    ).toBe(
      'Für dieses Gelenk gilt eine Grenze (Knie links): wie schwer die Last ist. Halten Sie sie ein, wie Dr. Ines Roth es Ihnen gesagt hat.',
    );
  });

  it('has no sentence left whose English is gone', () => {
    const said = texts.flatMap((text) => [
      text,
      ...text.replace(/^Nobody has checked: |\. If .*$/g, '').split('; '),
    ]);
    expect(pairs.flatMap(([english]) => (said.some((text) => says(english, text)) ? [] : [english]))).toEqual(
      [],
    );
  });

  it('has the same figures, and counts to the same number', () => {
    const differing = pairs.filter(
      ([english, told]) =>
        JSON.stringify(figuresOf(english)) !== JSON.stringify(figuresOf(told)) ||
        !isCountedAlike(english, told),
    );
    expect(differing).toEqual([]);
  });

  // What a person must do, and how soon, is in both languages or in neither.
  const acts: readonly (readonly [string, RegExp, RegExp])[] = [
    ['the emergency number', /emergency care/i, /Notruf/],
    ['the same day', /same day|\btoday\b/i, /am selben Tag|\bheute\b/],
    ['at once', /at once/i, /sofort/i],
    ['ringing the clinic', /\bring us\b/i, /rufen Sie uns\b.*\ban\b/i],
    ['getting help', /(get|call for) (medical )?help/i, /\bHilfe\b/],
    ['telling the clinic', /\btell us\b/i, /sagen Sie( es)? uns|sagen Sie es uns/i],
    ['stopping', /(^|[.:,] |If .*, )stop\b/i, /hören Sie auf|beenden Sie/i],
    ['taking it off', /take it off|take the cuff off|after it is off/i, /abnehmen|nehmen Sie .*\bab\b/i],
    ['breath', /breathing/i, /Atmen Sie weiter/],
    [
      'what must not be',
      /\b(do not|never|nobody|put no|put nothing)\b/i,
      /\b(nicht|keine?s?|nie|niemand|nichts)\b/i,
    ],
  ];

  it.each(acts)('asks for %s where the English does', (_, english, told) => {
    const missing = pairs.filter(([one, other]) => english.test(one) && !told.test(other));
    expect(missing).toEqual([]);
  });

  it.each(acts.slice(0, 8))('asks for %s nowhere else', (_, english, told) => {
    const added = pairs.filter(([one, other]) => told.test(other) && !english.test(one));
    expect(added).toEqual([]);
  });
});

describe('German sentences of the core', () => {
  it('stand in one file each', () => {
    const all = Object.values(sentenceFiles).flatMap((sentences) => Object.keys(sentences));
    expect(all.filter((english, place) => all.indexOf(english) !== place)).toEqual([]);
  });

  const mine = [...pairs, ...Object.entries(sentencesOf('exercises'))].map(([, told]) => told);

  it('have at most 20 words each', () => {
    expect(mine.flatMap(longParts)).toEqual([]);
  });

  it('carry no word of the trade or of reassurance, and German marks', () => {
    const unwanted =
      /(?<!\p{L})(?:sicher|gefahrlos|unbedenklich|harmlos|garantiert|Okklusion|Restriktion|RPE|Kontraindikation|Abduktion|Flexion|proximal|distal)|["“”]|--| - /iu;
    expect(mine.filter((told) => unwanted.test(told))).toEqual([]);
    expect(mine.flatMap(partsOf).filter((part) => /^\s|\s$|\s\s/.test(part))).toEqual([]);
  });
});
