/** Raises tried against the engine: single facts, and single answers in whole histories seen at later days. */

import { bolderAnswers } from '#core/decision/bolder.ts';
import { decide } from '#core/decision/decide.ts';
import { type Evaluation, evaluate } from '#core/decision/scope.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { dayFromNumber } from '#core/time/day.ts';
import { raiseFacts } from './raise-facts.ts';
import { raiseHistory } from './raise-history.ts';
import { randomFacts } from './random-facts.ts';
import { endOf, randomHistory } from './random-history.ts';
import { firstDay } from './random-prescriptions.ts';
import type { Seeded } from './seeded.ts';

export interface RaiseCount {
  readonly raises: number;
  /** Comparisons of four answers; a raise in a history is looked at on several later days. */
  readonly comparisons: number;
  readonly violations: readonly string[];
  /** Raises that started from progress: the ones that could have gone wrong boldly. */
  readonly fromProgress: number;
}

/** As a clinic has them at first, with a later morning that may speak for one left out, and as version 3 has them. */
const choices: readonly (SettingValues | undefined)[] = [undefined, { 'later-morning-days': 2 }, version3];

export const tryFactRaises = (random: Seeded, raises: number): RaiseCount => {
  const violations: string[] = [];
  let fromProgress = 0;
  for (let raise = 0; raise < raises; raise++) {
    const facts = randomFacts(random);
    const raised = raiseFacts(facts, random);
    const settings = choices[raise % choices.length];
    const before = decide(facts, settings);
    if (before.decision === 'progress') fromProgress++;
    const bolder = bolderAnswers(before, decide(raised, settings));
    if (bolder.length > 0) violations.push(`${bolder.join(', ')}: ${JSON.stringify({ facts, raised })}`);
  }
  return { raises, comparisons: raises, violations, fromProgress };
};

const bolderIn = (before: Evaluation, after: Evaluation): readonly string[] => [
  ...before.joints.flatMap((one, place) =>
    bolderAnswers(one.answers, after.joints[place]!.answers).map((name) => `${one.joint} ${name}`),
  ),
  ...before.items.flatMap((one, place) =>
    bolderAnswers(one, after.items[place]!).map((name) => `${one.itemId} ${name}`),
  ),
];

/** Later days looked at for each raise. */
const looks = 3;
const raisesPerHistory = 10;
const days = 30;

export const tryHistoryRaises = (random: Seeded, raises: number): RaiseCount => {
  const violations: string[] = [];
  let comparisons = 0;
  let fromProgress = 0;
  let done = 0;
  let record: PatientRecord = randomHistory(random, days);
  while (done < raises) {
    if (done % raisesPerHistory === 0) record = randomHistory(random, days);
    const raised = raiseHistory(record, random);
    if (!raised) continue;
    done++;
    for (let look = 0; look < looks; look++) {
      const day = Math.min(firstDay + days, raised.day + (look === 0 ? 1 : random.below(12)));
      const at = { instant: endOf(day), day: dayFromNumber(day) };
      const settings = choices[done % choices.length];
      const before = evaluate(record, at, settings);
      comparisons++;
      if (before.joints.some((one) => one.answers.decision === 'progress')) fromProgress++;
      const bolder = bolderIn(before, evaluate(raised.record, at, settings));
      if (bolder.length > 0) violations.push(`${at.day} ${bolder.join('; ')}`);
    }
  }
  return { raises, comparisons, violations, fromProgress };
};
