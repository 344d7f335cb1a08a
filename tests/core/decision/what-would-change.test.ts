import { describe, expect, it } from 'vitest';
import type { Field } from '#core/calculations/describe.ts';
import type { Answers } from '#core/decision/answers.ts';
import { decide } from '#core/decision/decide.ts';
import { factFields } from '#core/decision/facts/fact-fields.ts';
import { type Facts, redFlags } from '#core/decision/facts/facts.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { type OtherAnswer, whatWouldChange } from '#core/decision/what-would-change.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { randomFacts } from '#simulation/raises/random-facts.ts';
import { type Seeded, seeded } from '#simulation/raises/seeded.ts';
import { facts } from './base-facts.ts';

/** What a clinician, the plan or the clinic sets; no answer of a patient. */
const leftOut = [
  'usualPain',
  'usualPainTop',
  'painCeiling',
  'usualPainProvisional',
  'usualPainRise',
  'usualSwelling',
  'usualEffusion',
  'usualStiffnessMinutes',
  'inflammatoryArthritis',
  'prescribedReserve',
  'plannedSessions14',
  'baselineAgeDays',
  'baselineLatched',
];

const four = ({ decision, largestStep, today, contact }: Omit<Answers, 'reasons'>) =>
  [decision, largestStep, today, contact].join(' ');

const stored = (told: Facts, settings: SettingValues = engineDefaults) => ({
  facts: told,
  settings,
  engineVersion: String(settings['engine-version'] ?? 2),
  answers: decide(told, settings),
});

const changesOf = (told: Facts, settings?: SettingValues): readonly OtherAnswer[] =>
  whatWouldChange(stored(told, settings)) ?? [];

/** Numbers of a fact in order, the long ranges of days and counts up to a limit; means of scores by tenths. */
const numbersUpTo = (field: Field, limit: number): readonly number[] => {
  if (field.kind !== 'number' && field.kind !== 'integer') return [];
  if (field.name === 'morningPainMean7') return Array.from({ length: 101 }, (_, place) => place / 10);
  const [low, high] = [field.min!, field.max! > 2000 ? Math.min(limit, field.max!) : field.max!];
  return Array.from({ length: high - low + 1 }, (_, place) => low + place);
};

const otherWords = (field: Field, present: unknown): readonly unknown[] => {
  const told = Array.isArray(present) ? (present as readonly string[]) : [];
  const signs = [
    [],
    ...redFlags.map((one) => [one]),
    ...redFlags.map((one) => (told.includes(one) ? told.filter((other) => other !== one) : [...told, one])),
  ];
  const all = [
    ...(field.kind === 'enum' ? field.values : []),
    ...(field.kind === 'flag' ? [true, false] : []),
    ...(field.kind === 'list' ? signs : []),
    ...(field.nullable ? [null] : []),
  ];
  const texts = new Set(all.map((one) => JSON.stringify(one)));
  texts.delete(JSON.stringify(present));
  return [...texts].map((text) => JSON.parse(text) as unknown);
};

const names = ({ to }: OtherAnswer, value: unknown): boolean =>
  'anyOf' in to
    ? to.anyOf.some((one) => JSON.stringify(one) === JSON.stringify(value))
    : typeof value === 'number' &&
      value >= (to.low ?? Number.NEGATIVE_INFINITY) &&
      value <= (to.high ?? Number.POSITIVE_INFINITY);

/** Where the list and every change tried by itself disagree. */
const disagreements = (told: Facts, settings: SettingValues, limit: number): readonly string[] => {
  const now = four(decide(told, settings));
  const list = changesOf(told, settings);
  const found = list.filter(({ answers }) => four(answers) === now).map(({ fact }) => `${fact}: the same`);
  for (const field of factFields as readonly Field[]) {
    const name = field.name as keyof Facts;
    const own = list.filter(({ fact }) => fact === name);
    const present = told[name];
    if (leftOut.includes(name) || present === 'not-applicable') {
      if (own.length > 0) found.push(`${name}: named`);
      continue;
    }
    const tried = (value: unknown) => four(decide({ ...told, [name]: value }, settings));
    let runs = 0;
    let before = '';
    let last = Number.NEGATIVE_INFINITY;
    for (const value of numbersUpTo(field, limit)) {
      const after = value === present ? now : tried(value);
      const passes = typeof present === 'number' && value > present && last < present;
      if (after !== now && (after !== before || passes)) runs += 1;
      before = after;
      last = value;
      if (value === present) continue;
      const named = own.filter((one) => names(one, value)).map(({ answers }) => four(answers));
      if (named.join() !== (after === now ? '' : after)) found.push(`${name} ${value}: ${after}, ${named}`);
    }
    const outcomes = new Set<string>();
    for (const value of otherWords(field, present)) {
      const after = tried(value);
      if (after !== now) outcomes.add(after);
      const named = own.filter((one) => names(one, value)).map(({ answers }) => four(answers));
      if (named.join() !== (after === now ? '' : after)) found.push(`${name} ${value}: ${after}, ${named}`);
    }
    if (own.length !== runs + outcomes.size) found.push(`${name}: ${own.length} lines`);
  }
  return found;
};

const someSettings = (random: Seeded): SettingValues => ({
  ...engineDefaults,
  'engine-version': random.chance(0.3) ? 1 : 2,
  'ease-back-rise': random.pick([2, 3, 4]),
  'gap-days': random.pick([14, 21, 28]),
});

describe('what would have changed a decision', () => {
  it('names every single change that gives other answers, each once, and none that does not: 8 draws', () => {
    const random = seeded(20260131);
    const found = Array.from({ length: 8 }).flatMap(() =>
      disagreements(randomFacts(random), someSettings(random), 150),
    );
    expect(found).toEqual([]);
  });

  it('and nothing beyond what it tries gives others: two draws over the whole domain of every fact', () => {
    expect(disagreements(facts({}), engineDefaults, Number.POSITIVE_INFINITY)).toEqual([]);
    const random = seeded(7);
    const drawn = randomFacts(random, 0.9);
    expect(disagreements(drawn, someSettings(random), Number.POSITIVE_INFINITY)).toEqual([]);
  });

  // Version 2 of the table, usual pain 1: P5h from 1 over usual, P5 from 3 over, P2 over 5, P1x from 8 in the morning.
  it('says by how much: what each height of the next morning would have given', () => {
    const lines = changesOf(facts({})).filter(({ fact }) => fact === 'painNextMorning');
    expect(
      lines.map(({ to, answers, isBolder }) => [to, four(answers).replace('  ', ' '), isBolder]),
    ).toEqual([
      [{ low: 2, high: 3 }, 'hold as-planned none', false],
      [{ low: 4, high: 5 }, 'ease-back as-planned none', false],
      [{ low: 6, high: 7 }, 'ease-back bad-day none', false],
      [{ low: 8, high: 10 }, 'pause none same-day', false],
      [{ anyOf: [null] }, 'hold as-planned none', false],
    ]);
  });

  it('says what would have let more before what would have let less, with what lies on either side', () => {
    const list = changesOf(facts({ painNextMorning: 5 }));
    expect(list.slice(0, 3).map(({ fact, to }) => [fact, to])).toEqual([
      ['painNextMorning', { low: 0, high: 1 }],
      ['painNextMorning', { low: 2, high: 3 }],
      ['painNextMorning', { anyOf: [null] }],
    ]);
    expect(list.slice(3).some(({ isBolder }) => isBolder)).toBe(false);
    const above = list.filter(({ fact, isBolder }) => fact === 'painNextMorning' && !isBolder);
    expect(above.map(({ to }) => to)).toEqual([
      { low: 6, high: 7 },
      { low: 8, high: 10 },
    ]);
  });

  it('finds nothing that would have let more where two answers hold the dose, each by itself', () => {
    const list = changesOf(facts({ extraPainRelief: true, symptomSignal: true }));
    expect(list.filter(({ isBolder }) => isBolder)).toEqual([]);
    expect(changesOf(facts({ extraPainRelief: true })).filter(({ isBolder }) => isBolder)).toHaveLength(1);
  });

  it('is worked out under the version and the settings of the decision, not those of today', () => {
    const easedFrom = (settings: SettingValues) =>
      changesOf(facts({}), settings).find(
        ({ fact, answers }) => fact === 'painNextMorning' && answers.decision === 'ease-back',
      )?.to;
    expect(easedFrom({ ...engineDefaults, 'engine-version': 1 })).toEqual({ low: 3, high: 5 });
    expect(easedFrom({ ...engineDefaults, 'ease-back-rise': 4 })).toEqual({ low: 5, high: 5 });
  });

  it('says nothing of a version nobody knows, nor where the answers are not those that were given', () => {
    expect(whatWouldChange({ ...stored(facts({})), engineVersion: '99' })).toBeNull();
    const answers = { ...decide(facts({})), contact: 'routine' } as const;
    expect(whatWouldChange({ ...stored(facts({})), answers })).toBeNull();
  });

  it('leaves out what was not asked, and marks what is added up over days', () => {
    const list = changesOf(facts({ painTwoHours: 'not-applicable' }));
    const named = new Set(list.map(({ fact }) => fact));
    expect(named.has('painTwoHours')).toBe(false);
    expect(named.has('painLaterMorning')).toBe(false);
    const counted = new Set(list.filter(({ isCounted }) => isCounted).map(({ fact }) => fact));
    expect(counted.has('gapDays')).toBe(true);
    expect(counted.has('painNextMorning')).toBe(false);
  });
});
