/**
 * A clinician who looks every Monday and doses by hand. Pain in the session of at most 5 and the last morning
 * back to usual: 7.5 % more, otherwise the same. In the second reading two bad answers in a week take a fifth
 * off. A bad answer: pain over 5 in a session, or the morning after one 2 or more over usual.
 */
import type { Arm, Treatment } from '../arm.ts';
import { firstDay } from '../start.ts';
import { byLoad } from './by-load.ts';
import { tally } from './tally.ts';

const raise = 1.075;
const cut = 0.8;
const mostPain = 5;
const badMorning = 2;
const badAnswersForCut = 2;
const usualSetEvery = 42;
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

const answerTo = ({ during, mornings }: Week, usual: number, mayCut: boolean): 'raise' | 'cut' | 'hold' => {
  const bad =
    during.filter((pain) => pain !== null && pain > mostPain).length +
    mornings.filter((one) => one.isAfterSession && one.pain >= usual + badMorning).length;
  if (mayCut && bad >= badAnswersForCut) return 'cut';
  const isClear = during.length > 0 && during.every((pain) => pain !== null && pain <= mostPain);
  const last = mornings.at(-1);
  return isClear && last !== undefined && last.pain <= usual ? 'raise' : 'hold';
};

const treatByHand = (told: number, mayCut: boolean): Treatment => {
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
      if ((day - firstDay) % usualSetEvery === 0) {
        usual = usualNow(mornings, day, usual);
        add('baselines');
        add('clinicianActions');
      }
      const week = { during, mornings: mornings.filter((one) => one.day > lookedOn) };
      const answer = answerTo(week, usual, mayCut);
      if (answer !== 'hold') {
        change(answer === 'cut' ? cut : raise);
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

const byHand = (id: string, title: string, mayCut: boolean): Arm => ({
  id,
  title,
  treat: ({ usualPain }) => treatByHand(usualPain, mayCut),
});

export const byHandHold = byHand('by-hand-hold', 'By hand, holds at most', false);
export const byHandMayCut = byHand('by-hand-may-cut', 'By hand, may cut', true);
