/** What the batch command takes as a fact: under, at and over each bound, and which facts may be null or left out. */
import { describe, expect, it } from 'vitest';
import { inputSchema } from '#api/inputs/from-descriptor.ts';
import { factFields } from '#core/decision/facts/fact-fields.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { baseFacts, facts } from '../base-facts.ts';

const schema = inputSchema(factFields);
const isTaken = (name: keyof Facts, value: unknown): boolean =>
  schema.safeParse(facts({ [name]: value })).success;

/** An answer on the scale of pain or tiredness, and a change between two of them. */
const score = [0, 10] as const;
const scoreChange = [-10, 10] as const;
/** A day has 24 × 60 minutes. */
const minutes = [0, 1440] as const;
const hundredYearsInDays = [0, 36_500] as const;
const count = [0, 10_000] as const;

const bounds: readonly (readonly [keyof Facts, readonly [number, number]])[] = [
  ['painBefore', score],
  ['painDuring', score],
  ['painAfter', score],
  ['painTwoHours', score],
  ['painNextMorning', score],
  ['painLaterMorning', score],
  ['usualPain', score],
  // Usual pain and up to 2 over it.
  ['usualPainTop', [0, 12]],
  ['painCeiling', [5, 7]],
  ['morningPainMean7', score],
  ['morningsOverTop', count],
  ['usualPainRise', scoreChange],
  ['effusionRun', count],
  ['stiffnessMinutes', minutes],
  ['usualStiffnessMinutes', minutes],
  ['flareDays', hundredYearsInDays],
  ['otherJointsFlared', count],
  ['fatigueRise', scoreChange],
  ['repetitionsDonePercent', [0, 1000]],
  ['reserveShortfall', [-30, 30]],
  ['prescribedReserve', [0, 30]],
  ['sessionsOnTarget', count],
  ['missedSessions14', count],
  ['plannedSessions14', count],
  ['gapDays', hundredYearsInDays],
  ['treatmentChangeDays', hundredYearsInDays],
  ['baselineAgeDays', hundredYearsInDays],
];

describe('a fact handed over', () => {
  it.each(bounds)('%s is taken at its bounds %o and refused one past them', (name, [least, most]) => {
    expect([least - 1, least, most, most + 1].map((value) => isTaken(name, value))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  it('that is a number has its bounds stated here', () => {
    const numbers = factFields.filter(({ kind }) => kind === 'number' || kind === 'integer');
    expect(numbers.map(({ name }) => name).sort()).toEqual(bounds.map(([name]) => name).sort());
  });

  it('may be null where it can be unknown, and nowhere else', () => {
    expect(factFields.map(({ name }) => name).filter((name) => isTaken(name, null))).toEqual([
      'painBefore',
      'painDuring',
      'painAfter',
      'painTwoHours',
      'painNextMorning',
      'painLaterMorning',
      'usualPain',
      'usualPainTop',
      'morningPainMean7',
      'usualPainRise',
      'swelling',
      'stiffnessMinutes',
      'fatigueRise',
      'redFlags',
      'repetitionsDonePercent',
      'treatmentChangeDays',
    ]);
  });

  it('may be left out where version 2 brought it, and nowhere else', () => {
    const without = (name: keyof Facts): boolean => {
      const { [name]: _left, ...others } = baseFacts;
      return schema.safeParse(others).success;
    };
    expect(factFields.map(({ name }) => name).filter(without)).toEqual([
      'painLaterMorning',
      'twoOverBefore',
      'morningsOverTop',
      'usualPainProvisional',
      'usualPainRise',
    ]);
  });
});
