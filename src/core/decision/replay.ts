/**
 * Stored decisions decided again: under their own choices, which must give the same answer, and under
 * others, which shows whose decisions a change would touch before it is made.
 */
import type { SettingValues } from '../sources/clinic-setting.ts';
import type { Answers } from './answers.ts';
import { decide } from './decide.ts';
import { type FactsOfAnyVersion, wholeFacts } from './facts/facts.ts';
import { type EngineVersion, engineVersions, underVersion } from './settings.ts';

export interface StoredDecision {
  readonly id: string;
  readonly facts: FactsOfAnyVersion;
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

/** The version of the rules by the name under which a decision stored it; null for one this release does not know. */
const versionNamed = (name: string): EngineVersion | null =>
  engineVersions.find((version) => String(version) === name) ?? null;

/** A decision taken again under its own version of the rules and its own choices; null for an unknown version. */
export const replay = ({
  facts,
  settings,
  engineVersion,
}: Pick<StoredDecision, 'facts' | 'settings' | 'engineVersion'>): Answers | null => {
  const version = versionNamed(engineVersion);
  return version && decide(wholeFacts(facts), underVersion(settings, version));
};

/**
 * A decision taken again with some choices moved and every other one as it was then, so that a difference
 * comes from those alone; null for an unknown version.
 */
export const replayWith = (
  { facts, settings, engineVersion }: Pick<StoredDecision, 'facts' | 'settings' | 'engineVersion'>,
  moved: SettingValues,
): Answers | null => {
  const version = versionNamed(engineVersion);
  return version && decide(wholeFacts(facts), { ...underVersion(settings, version), ...moved });
};

/** Stored decisions that no longer come out as stored. Those of an unknown version are not compared. */
export const brokenReplays = (stored: readonly StoredDecision[]): readonly Difference[] =>
  stored.flatMap((one) => {
    const after = replay(one);
    return !after || isSame(one.answers, after) ? [] : [{ id: one.id, before: one.answers, after }];
  });

/** Decisions that would have come out otherwise under other choices. */
export const differencesUnder = (
  stored: readonly StoredDecision[],
  settings: SettingValues,
): readonly Difference[] =>
  stored.flatMap(({ id, facts, answers }) => {
    const after = decide(wholeFacts(facts), settings);
    return isSame(answers, after) ? [] : [{ id, before: answers, after }];
  });
