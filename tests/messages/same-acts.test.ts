/** What a person must do, how soon, and what must not be, is in every language or in none. */
import { describe, expect, it } from 'vitest';
import type { LanguageTag } from '#messages/languages.ts';
import { otherTags, type Pair, pairsWith } from './pairs.ts';

interface Act {
  readonly what: string;
  readonly english: RegExp;
  readonly told: Readonly<Partial<Record<LanguageTag, RegExp>>>;
}

const act = (what: string, english: RegExp, de: RegExp): Act => ({ what, english, told: { de } });

/** Asked for in both languages or in neither. */
const bothWays: readonly Act[] = [
  act('emergency care', /emergency/i, /Notruf/),
  act('the same day', /same day/i, /am selben Tag/),
  act('today', /\btoday\b/i, /\bheute\b/i),
  act('at once', /at once/i, /sofort/i),
  act(
    'ringing',
    /\b(ring (us|me|the (clinic|emergency)|\{number\})|rung|ring (once|if|first))|, or ring\b|and ring\b/i,
    /(rufen? .*\ban\b|angerufen)/i,
  ),
  act('help', /(get|call for) (medical )?help|help now|no call for help/i, /\bHilfe\b|Hilferuf/),
  act('telling the clinic', /\btell us\b|\blet us know\b/i, /sagen Sie( es)? uns|sagen Sie es uns/i),
  act(
    'stopping',
    /\bstop\b(?! one)/i,
    /hören Sie .*auf|aufhören|beenden Sie|keine Übungen (mehr|und)|nicht mehr machen/i,
  ),
  act(
    'taking it off',
    /take it off|take the cuff off|after it is off/i,
    /abnehmen|nehmen? (Sie|ich) .*\bab\b|nehme ich sie ab/i,
  ),
  act('breath', /keep breathing/i, /Atmen Sie weiter/),
];

/** Another language may say these without the English: "only so far" for "stop". */
const oneWay: readonly Act[] = [
  act('help at this moment', /help now/i, /jetzt Hilfe/),
  act(
    'what must not be',
    /\b(do not|cannot|never|nobody|no longer|put no|put nothing)\b/i,
    /\b(nicht|keine?[nrs]?|nie|niemand(en)?|nichts|ohne)\b/i,
  ),
];

/** What the steps of an exercise ask for, both ways. */
const inExercises: readonly Act[] = [
  act('leaving something undone', /\b(do not|cannot)\b/i, /\bnicht\b/i),
  act('breath', /keep breathing/i, /Atmen Sie weiter/),
  act('slowness', /\bslowly\b/i, /langsam(?!( bis))/i),
  act('the other side', /\b(other|opposite)\b/i, /\bandere[nrs]?\b/i),
];

const missing = (pairs: readonly Pair[], { english, told }: Act, tag: LanguageTag) => {
  const there = pairs.filter((pair) => english.test(pair.english));
  expect(there.length).toBeGreaterThan(0);
  return there.filter((pair) => !told[tag]!.test(pair.told));
};

const added = (pairs: readonly Pair[], { english, told }: Act, tag: LanguageTag) =>
  pairs.filter((pair) => told[tag]!.test(pair.told) && !english.test(pair.english));

describe.each(otherTags)('in %s', (tag) => {
  const all = pairsWith(tag);
  // Pages name today and a stop where nothing is asked for; what they ask for is on no list yet.
  const pairs = all.filter(({ area }) => area !== 'exercises' && area !== 'pages');
  const exercises = all.filter(({ area }) => area === 'exercises');

  it.each([...bothWays, ...oneWay])('$what is asked for where the English does', (one) => {
    expect(missing(pairs, one, tag)).toEqual([]);
  });

  it.each(bothWays)('$what is asked for nowhere else', (one) => {
    expect(added(pairs, one, tag)).toEqual([]);
  });

  it.each(inExercises)(
    '$what in an exercise is asked for where the English does, and nowhere else',
    (one) => {
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
