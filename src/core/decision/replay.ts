/**
 * Stored decisions decided again: under their own choices, which must give the same answer, and under
 * others, which shows whose decisions a change would touch before it is made.
 */
import type { SettingValues } from '../sources/clinic-setting.ts';
import type { Answers } from './answers.ts';
import { decide } from './decide.ts';
import type { Facts } from './facts/facts.ts';
import { engineVersion } from './rules/table.ts';

export interface StoredDecision {
  readonly id: string;
  readonly facts: Facts;
  readonly settings: SettingValues;
  readonly engineVersion: string;
  readonly answers: Omit<Answers, 'reasons'>;
}

export interface Difference {
  readonly id: string;
  readonly before: Omit<Answers, 'reasons'>;
  readonly after: Answers;
}

/** Whether two decisions give the same four answers; their reasons may differ. */
export const isSame = (a: Omit<Answers, 'reasons'>, b: Omit<Answers, 'reasons'>): boolean =>
  a.decision === b.decision &&
  a.largestStep === b.largestStep &&
  a.today === b.today &&
  a.contact === b.contact;

/** Stored decisions that no longer come out as stored. Those of another engine version are not compared. */
export const brokenReplays = (stored: readonly StoredDecision[]): readonly Difference[] =>
  stored.flatMap(({ id, facts, settings, engineVersion: version, answers }) => {
    if (version !== engineVersion) return [];
    const after = decide(facts, settings);
    return isSame(answers, after) ? [] : [{ id, before: answers, after }];
  });

/** Decisions that would have come out otherwise under other choices. */
export const differencesUnder = (
  stored: readonly StoredDecision[],
  settings: SettingValues,
): readonly Difference[] =>
  stored.flatMap(({ id, facts, answers }) => {
    const after = decide(facts, settings);
    return isSame(answers, after) ? [] : [{ id, before: answers, after }];
  });
