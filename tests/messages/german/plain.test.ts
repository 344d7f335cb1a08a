/** How the German of reasons, questions, agreements, refusals and the sheet reads: plain, short, without reassurance. */
import { describe, expect, it } from 'vitest';
import { sentenceFiles } from '#ui/language/bridge/sentences.ts';
import { longParts, partsOf, sentencesOf } from '../german-sentences.ts';

const concerns = ['consents', 'changes', 'doses', 'questions', 'reasons', 'refusals', 'self-management'];
const pairs = concerns.flatMap((concern) => Object.entries(sentencesOf(concern)));
const slotsOf = (text: string) => (text.match(/\{[#=]?[a-z-]+\}/g) ?? []).sort();

describe('German of what the core and the server say to a patient', () => {
  it('stands in one file each', () => {
    const all = Object.values(sentenceFiles).flatMap((sentences) => Object.keys(sentences));
    expect(all.filter((english, place) => all.indexOf(english) !== place)).toEqual([]);
  });

  it('has at most 20 words a sentence', () => {
    expect(pairs.length).toBeGreaterThan(220);
    expect(pairs.flatMap(([, told]) => longParts(told))).toEqual([]);
  });

  it('uses each value of the English once', () => {
    expect(pairs.filter(([english, told]) => slotsOf(english).join() !== slotsOf(told).join())).toEqual([]);
  });

  it('carries no word of the trade or of reassurance, and German marks', () => {
    const unwanted =
      /(?<!\p{L})(?:sicher|gefahrlos|unbedenklich|harmlos|garantiert|Okklusion|Restriktion|Kontraindikation)|["“”]|--| - /iu;
    expect(pairs.filter(([, told]) => unwanted.test(told))).toEqual([]);
    expect(pairs.flatMap(([, told]) => partsOf(told)).filter((part) => /^\s|\s$|\s\s/.test(part))).toEqual(
      [],
    );
  });

  // What a person must do, and how soon, is in both languages or in neither.
  const acts: readonly (readonly [string, RegExp, RegExp])[] = [
    ['today', /\btoday\b/i, /\bheute\b/i],
    ['the same day', /same day/i, /am selben Tag/],
    ['now', /help now/i, /jetzt Hilfe/],
    ['at once', /at once/i, /sofort/i],
    ['ringing', /\b(ring|rung)\b/i, /(rufen? .*\ban\b|angerufen)/i],
    [
      'stopping',
      /(^|[.:,] |once )stop\b|\bStop and/i,
      /hören Sie .*auf|aufhören|keine Übungen mehr|nicht mehr machen/i,
    ],
    ['taking it off', /take it off|take the cuff off/i, /abnehmen|nehme ich sie ab|nehme sie ab/i],
    ['what must not be', /\b(do not|no longer|nobody)\b/i, /\b(nicht|keine?n?|niemand(en)?|nichts)\b/i],
  ];

  it.each(acts)('asks for %s where the English does', (_, english, told) => {
    const there = pairs.filter(([one]) => english.test(one));
    expect(there.length).toBeGreaterThan(0);
    expect(there.filter(([, other]) => !told.test(other))).toEqual([]);
  });
});
