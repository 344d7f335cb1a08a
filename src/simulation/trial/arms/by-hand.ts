/**
 * A clinician who looks every Monday and doses by hand. Pain in the session of at most 5 and the last morning
 * back to usual: 7.5 % more, otherwise the same. In the second reading two bad answers in a week take a fifth
 * off. A bad answer: pain over 5 in a session, or the morning after one 2 or more over usual. The figures can
 * be others: a clinic tries its own rule that way.
 */
import type { Field, InputOf } from '#core/calculations/describe.ts';
import type { Arm, Treatment } from '../arm.ts';
import { firstDay } from '../start.ts';
import { byLoad } from './by-load.ts';
import { tally } from './tally.ts';

export const byHandFields = [
  {
    name: 'weeklyRisePercent',
    kind: 'number',
    unit: '%',
    min: 0,
    max: 50,
    about: 'more load after a week with every answer in order',
  },
  {
    name: 'mostPain',
    kind: 'integer',
    unit: '{score}',
    min: 0,
    max: 10,
    about: 'highest pain in a session that is still in order',
  },
  {
    name: 'badMorning',
    kind: 'integer',
    unit: '{score}',
    min: 1,
    max: 10,
    about: 'this many points over usual pain, the morning after a session is a bad answer',
  },
  {
    name: 'badAnswersForCut',
    kind: 'integer',
    unit: '1',
    min: 0,
    max: 10,
    about: 'bad answers in a week after which load is cut; 0 = never cut',
  },
  { name: 'cutPercent', kind: 'number', unit: '%', min: 1, max: 90, about: 'less load when it is cut' },
  {
    name: 'usualSetEveryWeeks',
    kind: 'integer',
    unit: 'wk',
    min: 1,
    max: 52,
    about: 'weeks after which usual pain is set anew from the mornings',
  },
] as const satisfies readonly Field[];

export type ByHandRule = InputOf<typeof byHandFields>;

export const usualByHand: ByHandRule = {
  weeklyRisePercent: 7.5,
  mostPain: 5,
  badMorning: 2,
  badAnswersForCut: 2,
  cutPercent: 20,
  usualSetEveryWeeks: 6,
};

const daysOfWeek = 7;
const usualFromDays = 14;
/** Fewer answered mornings leave the usual pain as it was. */
const leastMornings = 7;

interface Morning {
  readonly day: number;
  readonly pain: number;
  readonly flare: boolean | null;
  readonly isAfterSession: boolean;
}

const lowerMedian = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)]!;

const usualNow = (mornings: readonly Morning[], day: number, before: number): number => {
  const quiet = mornings.filter((one) => one.flare === false && one.day > day - usualFromDays);
  return quiet.length < leastMornings ? before : lowerMedian(quiet.map(({ pain }) => pain));
};

interface Week {
  readonly during: readonly (number | null)[];
  readonly mornings: readonly Morning[];
}

const answerTo = (
  { during, mornings }: Week,
  usual: number,
  { mostPain, badMorning, badAnswersForCut }: ByHandRule,
): 'raise' | 'cut' | 'hold' => {
  const bad =
    during.filter((pain) => pain !== null && pain > mostPain).length +
    mornings.filter((one) => one.isAfterSession && one.pain >= usual + badMorning).length;
  if (badAnswersForCut > 0 && bad >= badAnswersForCut) return 'cut';
  const isClear = during.length > 0 && during.every((pain) => pain !== null && pain <= mostPain);
  const last = mornings.at(-1);
  return isClear && last !== undefined && last.pain <= usual ? 'raise' : 'hold';
};

const treatByHand = (told: number, rule: ByHandRule): Treatment => {
  const { dose, planned, change } = byLoad();
  const { add, take } = tally();
  const mornings: Morning[] = [];
  let usual = told;
  let during: (number | null)[] = [];
  let lookedOn = firstDay;
  let lastSession: number | null = null;
  return {
    morning: (day, entry) => {
      const answers = entry?.joints[0];
      if (!answers || answers.pain === null) return;
      const { pain, flare } = answers;
      mornings.push({ day, pain, flare, isAfterSession: lastSession === day - 1 });
    },
    look: (day) => {
      add('contacts');
      add('clinicianActions');
      if ((day - firstDay) % (rule.usualSetEveryWeeks * daysOfWeek) === 0) {
        usual = usualNow(mornings, day, usual);
        add('baselines');
        add('clinicianActions');
      }
      const week = { during, mornings: mornings.filter((one) => one.day > lookedOn) };
      const answer = answerTo(week, usual, rule);
      if (answer !== 'hold') {
        change(answer === 'cut' ? 1 - rule.cutPercent / 100 : 1 + rule.weeklyRisePercent / 100);
        add(answer === 'cut' ? 'cuts' : 'raises');
        if (answer === 'raise') add('signed');
      }
      during = [];
      lookedOn = day;
    },
    planned: () => undefined,
    work: planned,
    session: (day, entry) => {
      lastSession = day;
      during.push(entry.joints[0]?.painDuring ?? null);
    },
    dose,
    acts: take,
  };
};

export const byHand = (id: string, title: string, rule: ByHandRule): Arm => ({
  id,
  title,
  treat: ({ usualPain }) => treatByHand(usualPain, rule),
});

export const byHandHold = byHand('by-hand-hold', 'By hand, holds at most', {
  ...usualByHand,
  badAnswersForCut: 0,
});
export const byHandMayCut = byHand('by-hand-may-cut', 'By hand, may cut', usualByHand);
