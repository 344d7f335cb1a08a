/** What a person must do, how soon, and what must not be, is in every language or in none. */
import { describe, expect, it } from 'vitest';
import type { LanguageTag } from '#messages/languages.ts';
import { type Act, bothWays, inExercises, oneWay } from './acts.ts';
import { otherTags, type Pair, pairsWith } from './pairs.ts';
import { spokenIn } from './spoken.ts';

type Row = readonly [what: Act, english: RegExp];
const rowsOf = (acts: Readonly<Partial<Record<Act, RegExp>>>) => Object.entries(acts) as Row[];

const toldIn = (tag: LanguageTag, what: Act): RegExp => spokenIn[tag].acts![what];

const missing = (pairs: readonly Pair[], [what, english]: Row, tag: LanguageTag) => {
  const there = pairs.filter((pair) => english.test(pair.english));
  expect(there.length).toBeGreaterThan(0);
  return there.filter((pair) => !toldIn(tag, what).test(pair.told));
};

const added = (pairs: readonly Pair[], [what, english]: Row, tag: LanguageTag) =>
  pairs.filter((pair) => toldIn(tag, what).test(pair.told) && !english.test(pair.english));

describe.each(otherTags)('in %s', (tag) => {
  const all = pairsWith(tag);
  // Pages name today and a stop where nothing is asked for; what they ask for is on no list yet.
  const pairs = all.filter(({ area }) => area !== 'exercises' && area !== 'pages');
  const exercises = all.filter(({ area }) => area === 'exercises');

  it.each(rowsOf({ ...bothWays, ...oneWay }))('%s is asked for where the English does', (...one) => {
    expect(missing(pairs, one, tag)).toEqual([]);
  });

  it.each(rowsOf(bothWays))('%s is asked for nowhere else', (...one) => {
    expect(added(pairs, one, tag)).toEqual([]);
  });

  it.each(rowsOf(inExercises))(
    '%s in an exercise is asked for where the English does, and nowhere else',
    (...one) => {
      expect(missing(exercises, one, tag)).toEqual([]);
      expect(added(exercises, one, tag)).toEqual([]);
    },
  );

  it('a question stays a question', () => {
    const questions = pairs.filter(({ area }) => area.startsWith('screening'));
    const whole = questions.filter(({ area }) => area === 'screening-questions');
    expect(whole.filter(({ english }) => !english.endsWith('?'))).toEqual([]);
    expect(questions.filter(({ english, told }) => english.endsWith('?') !== told.endsWith('?'))).toEqual([]);
  });

  it('what is consented to has as many sentences', () => {
    const count = (text: string) => text.split(/(?<=\.)\s/).length;
    const consents = pairs.filter(({ area }) => area === 'consents');
    expect(consents.length).toBeGreaterThan(0);
    expect(consents.filter(({ english, told }) => count(english) !== count(told))).toEqual([]);
  });
});

describe('in German', () => {
  const rules = pairsWith('de').filter(({ area }) => ['rules', 'decisions'].includes(area));

  it('a pause, a sign and a rest are said as strictly as in English', () => {
    const strict = [
      [/speak with us today/, /sprechen Sie heute mit uns/],
      [/Rest (it|the joint|this joint)/, /ruhen/],
      [/stay where you are/i, /beim jetzigen Plan/],
      [/do a little less/i, /etwas weniger/],
    ] as const;
    for (const [english, told] of strict) {
      const there = rules.filter((pair) => english.test(pair.english));
      expect(there.length).toBeGreaterThan(0);
      expect(there.filter((pair) => !told.test(pair.told))).toEqual([]);
    }
  });
});
