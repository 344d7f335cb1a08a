/**
 * What other settings would have said: each look at a joint taken twice over the record as it was known then, once
 * under the settings of its day and once under others, told by day. Nobody knows how the person would have
 * answered to another dose; whoever shows this says so.
 */
import type { Joint } from '../../exercises/joints.ts';
import { addDays, type Day, daysBetween } from '../../time/day.ts';
import { type Answers, type DecisionWord, decisions } from '../answers.ts';
import { bolderAnswers, type FourAnswers } from '../bolder.ts';
import { decisionRank } from '../decide.ts';
import { isSame, rulesThatDiffer } from '../replay.ts';

/** One look at a joint: what it said, and what it would have said. */
export interface TwiceDecided {
  readonly joint: Joint;
  readonly day: Day;
  readonly before: Answers;
  readonly after: Answers;
}

/** A day on which a joint would have had another answer; of several looks the last that differs. */
export interface OtherDay {
  readonly joint: Joint;
  readonly day: Day;
  readonly before: FourAnswers;
  readonly after: FourAnswers;
  /** Those that fire on one side alone. */
  readonly rules: readonly string[];
  /**
   * By the word of the decision; where it is the same, by step, advice for the day and contact. "other" = one of these
   * bolder and another more cautious.
   */
  readonly way: 'bolder' | 'more-cautious' | 'other';
}

/** Days that would have come out so, by the word they would have had. */
export type DaysByWord = Readonly<Record<DecisionWord, number>>;

export interface WhatIfWeek {
  readonly from: Day;
  readonly moreCautious: number;
  readonly bolder: number;
}

export interface WhatIf {
  /** Days with a look at a joint, joint by joint. */
  readonly looked: number;
  readonly bolder: DaysByWord;
  readonly moreCautious: DaysByWord;
  readonly other: number;
  /** Oldest first. */
  readonly days: readonly OtherDay[];
}

const wayOf = ({ before, after }: TwiceDecided): OtherDay['way'] => {
  const step = decisionRank[after.decision] - decisionRank[before.decision];
  if (step !== 0) return step > 0 ? 'bolder' : 'more-cautious';
  const isBolder = bolderAnswers(before, after).length > 0;
  const isMoreCautious = bolderAnswers(after, before).length > 0;
  return isBolder === isMoreCautious ? 'other' : isBolder ? 'bolder' : 'more-cautious';
};

const fourOf = ({ decision, largestStep, today, contact }: FourAnswers): FourAnswers => ({
  decision,
  largestStep,
  today,
  contact,
});

const otherDay = (look: TwiceDecided): OtherDay => ({
  joint: look.joint,
  day: look.day,
  before: fourOf(look.before),
  after: fourOf(look.after),
  rules: rulesThatDiffer(look.before, look.after),
  way: wayOf(look),
});

const countedByWord = (days: readonly OtherDay[], way: OtherDay['way']): DaysByWord =>
  Object.fromEntries(
    decisions.map((word) => [
      word,
      days.filter((one) => one.way === way && one.after.decision === word).length,
    ]),
  ) as Record<DecisionWord, number>;

export const nothingLooked: WhatIf = {
  looked: 0,
  bolder: { pause: 0, 'ease-back': 0, hold: 0, progress: 0 },
  moreCautious: { pause: 0, 'ease-back': 0, hold: 0, progress: 0 },
  other: 0,
  days: [],
};

const addedByWord = (a: DaysByWord, b: DaysByWord): DaysByWord =>
  Object.fromEntries(decisions.map((word) => [word, a[word] + b[word]])) as Record<DecisionWord, number>;

/** The counts of two people together; whose days they are is kept by whoever adds them up. */
export const addedUp = (a: WhatIf, b: WhatIf): WhatIf => ({
  looked: a.looked + b.looked,
  bolder: addedByWord(a.bolder, b.bolder),
  moreCautious: addedByWord(a.moreCautious, b.moreCautious),
  other: a.other + b.other,
  days: [...a.days, ...b.days],
});

/** Looks of one patient, oldest first. */
export const whatIf = (looks: readonly TwiceDecided[]): WhatIf => {
  const asked = new Set<string>();
  const differing = new Map<string, OtherDay>();
  for (const look of looks) {
    const key = `${look.day} ${look.joint}`;
    asked.add(key);
    if (!isSame(look.before, look.after)) differing.set(key, otherDay(look));
  }
  const days = [...differing.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, day]) => day);
  return {
    looked: asked.size,
    bolder: countedByWord(days, 'bolder'),
    moreCautious: countedByWord(days, 'more-cautious'),
    other: days.filter(({ way }) => way === 'other').length,
    days,
  };
};

export const daysIn = (byWord: DaysByWord): number =>
  Object.values(byWord).reduce((sum, one) => sum + one, 0);

/** Every week from a day on, oldest first; what lies beyond the last falls into it. */
export const byWeek = (
  since: Day,
  weeks: number,
  days: readonly Pick<OtherDay, 'day' | 'way'>[],
): readonly WhatIfWeek[] =>
  Array.from({ length: weeks }, (_, week) => {
    const own = days.filter(
      ({ day }) => Math.min(weeks - 1, Math.floor(daysBetween(since, day) / 7)) === week,
    );
    const count = (way: OtherDay['way']) => own.filter((one) => one.way === way).length;
    return { from: addDays(since, week * 7), bolder: count('bolder'), moreCautious: count('more-cautious') };
  });
