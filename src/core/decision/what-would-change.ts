/**
 * What would have changed a decision: every single fact that, had it been otherwise and all else the same, would
 * have given other answers, with the values that do. Found by deciding again, under the version and the
 * clinic's choices of the decision. For clinicians alone: on a phone it would teach people to shade answers.
 */
import type { EnumField, Field, NumberField } from '../calculations/describe.ts';
import { bolderAnswers, type FourAnswers } from './bolder.ts';
import { factFields } from './facts/fact-fields.ts';
import { type Facts, wholeFacts } from './facts/facts.ts';
import { isSame, replay, type StoredDecision } from './replay.ts';

type FactName = keyof Facts;

type Word = string | boolean | null | readonly string[];

/** Numbers from low to high, both counted in, null = however far; otherwise each value by itself. */
export type OtherValues =
  | { readonly low: number | null; readonly high: number | null }
  | { readonly anyOf: readonly Word[] };

export interface OtherAnswer {
  readonly fact: FactName;
  readonly from: Facts[FactName];
  readonly to: OtherValues;
  readonly answers: FourAnswers;
  /** One of the four answers at least would have let more. */
  readonly isBolder: boolean;
  /** Added up over several days or entries, so that no one answer of the day moves it by itself. */
  readonly isCounted: boolean;
}

/** Set by a clinician, the plan or the clinic: not for an answer to change, and left out. */
const setInClinic: ReadonlySet<string> = new Set<FactName>([
  'usualPain',
  'usualPainTop',
  'usualPainProvisional',
  'usualPainRise',
  'usualSwelling',
  'usualEffusion',
  'usualStiffnessMinutes',
  'baselineAgeDays',
  'baselineLatched',
  'painCeiling',
  'prescribedReserve',
  'plannedSessions14',
  'inflammatoryArthritis',
]);

const countedOverDays: ReadonlySet<string> = new Set<FactName>([
  'morningPainMean7',
  'previousMorningOverTop',
  'previousPeakEight',
  'twoOverBefore',
  'morningsOverTop',
  'flareDays',
  'otherJointsFlared',
  'effusionRun',
  'sessionsOnTarget',
  'missedSessions14',
  'gapDays',
  'treatmentChangeDays',
  'symptomSignal',
]);

/** Counts and days are tried up to here, or to twice the count there is: no threshold of a clinic lies further off. */
const countedUpTo = 100;
/** The widest range that is tried whole. */
const widest = 2000;
const topOfScale = 10;

const numbersOf = (field: NumberField, present: unknown): readonly number[] => {
  const { kind, min = 0, max = countedUpTo } = field;
  const furthest = typeof present === 'number' ? Math.max(countedUpTo, 2 * present) : countedUpTo;
  const last = max - min > widest ? Math.min(max, furthest) : max;
  // A mean of scores is no whole number; what else is measured is told in whole numbers.
  const parts = kind === 'number' && min === 0 && max === topOfScale ? 10 : 1;
  return Array.from({ length: (last - min) * parts + 1 }, (_, place) => (min * parts + place) / parts);
};

/** One of the list more or less, one alone, or none at all. */
const listsOf = (values: readonly string[], present: unknown): readonly (readonly string[])[] => {
  const told = Array.isArray(present) ? (present as readonly string[]) : [];
  const oneOtherwise = values.map((value) =>
    told.includes(value) ? told.filter((one) => one !== value) : [...told, value],
  );
  const lists = [[], ...oneOtherwise, ...values.map((value) => [value])];
  return [...new Map(lists.map((list) => [list.join(), list])).values()];
};

const wordsOf = (field: Field, present: unknown): readonly Word[] => [
  ...(field.kind === 'enum' ? field.values : []),
  ...(field.kind === 'flag' ? [false, true] : []),
  ...(field.kind === 'list' ? listsOf((field.of as EnumField).values, present) : []),
  ...(field.nullable ? [null] : []),
];

interface Run {
  readonly to: OtherValues;
  readonly answers: FourAnswers;
}

/** Neighbouring numbers with the same answers stand together, on either side of what was told. */
const runsOfNumbers = (
  field: NumberField,
  present: unknown,
  decided: (value: number) => FourAnswers,
): readonly Run[] => {
  const values = numbersOf(field, present);
  const sides =
    typeof present === 'number'
      ? [values.filter((value) => value < present), values.filter((value) => value > present)]
      : [values];
  const first = values[0]!;
  const last = values.at(-1)!;
  return sides.flatMap((side) => {
    const runs: { low: number; high: number; answers: FourAnswers }[] = [];
    for (const value of side) {
      const answers = decided(value);
      const run = runs.at(-1);
      if (run && isSame(run.answers, answers)) run.high = value;
      else runs.push({ low: value, high: value, answers });
    }
    return runs.map(({ low, high, answers }) => ({
      to: {
        low: low === first && first < 0 ? null : low,
        high: high === last && last > topOfScale ? null : high,
      },
      answers,
    }));
  });
};

/** Words have no distance: those with the same answers stand together. */
const runsOfWords = (
  field: Field,
  present: unknown,
  decided: (value: Word) => FourAnswers,
): readonly Run[] => {
  const runs: { anyOf: Word[]; answers: FourAnswers }[] = [];
  for (const value of wordsOf(field, present)) {
    if (JSON.stringify(value) === JSON.stringify(present)) continue;
    const answers = decided(value);
    const alike = runs.find((run) => isSame(run.answers, answers));
    if (alike) alike.anyOf.push(value);
    else runs.push({ anyOf: [value], answers });
  }
  return runs.map(({ anyOf, answers }) => ({ to: { anyOf }, answers }));
};

const notAsked = 'not-applicable';

/**
 * Every single change of a fact that would have given other answers, those that would have let more first; null
 * where this release does not know the version of the rules, or does not come to the answers that were given.
 */
export const whatWouldChange = (stored: Omit<StoredDecision, 'id'>): readonly OtherAnswer[] | null => {
  const now = replay(stored);
  if (!now || !isSame(now, stored.answers)) return null;
  const facts = wholeFacts(stored.facts);
  const others = factFields.flatMap((field: Field): readonly OtherAnswer[] => {
    const fact = field.name as FactName;
    const from = facts[fact];
    // What was not asked could not have been answered otherwise.
    if (setInClinic.has(fact) || from === notAsked) return [];
    const decided = (value: unknown): FourAnswers => {
      const { reasons: _reasons, ...answers } =
        replay({ ...stored, facts: { ...facts, [fact]: value } }) ?? now;
      return answers;
    };
    const isNumber = field.kind === 'number' || field.kind === 'integer';
    return [...(isNumber ? runsOfNumbers(field, from, decided) : []), ...runsOfWords(field, from, decided)]
      .filter(({ answers }) => !isSame(answers, now))
      .map(({ to, answers }) => ({
        fact,
        from,
        to,
        answers,
        isBolder: bolderAnswers(now, answers).length > 0,
        isCounted: countedOverDays.has(fact),
      }));
  });
  return [...others].sort((a, b) => Number(b.isBolder) - Number(a.isBolder));
};
