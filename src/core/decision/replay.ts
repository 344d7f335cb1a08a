/**
 * Two questions about what was decided, and which of them is answered here. "Decide again": from the facts as
 * they were stored, does this release still give what was given? The other, what other settings would have said,
 * has to gather the facts anew from the record as it was known then (`what-if.ts`).
 */
import type { SettingValues } from '../sources/clinic-setting.ts';
import type { Answers } from './answers.ts';
import { decide } from './decide.ts';
import { factFields } from './facts/fact-fields.ts';
import { type FactsOfAnyVersion, wholeFacts } from './facts/facts.ts';
import { type EngineVersion, engineVersions, underVersion } from './settings.ts';

export interface StoredDecision {
  readonly id: string;
  readonly facts: FactsOfAnyVersion;
  readonly settings: SettingValues;
  readonly engineVersion: string;
  readonly answers: Omit<Answers, 'reasons'>;
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

export type DecidedAgain =
  | { readonly outcome: 'same' }
  | {
      readonly outcome: 'different';
      readonly after: Answers;
      /** Those that fired on one side alone; empty where the same rules say something else. */
      readonly rules: readonly string[];
    }
  | { readonly outcome: 'not-replayable'; readonly reason: string };

const needed = factFields.filter((field) => !('optional' in field && field.optional)).map(({ name }) => name);

/** Facts that the rules read and the row does not hold: to fill them in would be to make an answer up. */
const absentFrom = (facts: Readonly<Record<string, unknown>>): readonly string[] =>
  needed.filter((name) => facts[name] === undefined);

/** Rules that fired on one side alone: by which of them two answers differ. */
export const rulesThatDiffer = (
  before: Pick<Answers, 'reasons'>,
  after: Pick<Answers, 'reasons'>,
): readonly string[] => {
  const [was, is] = [before, after].map(({ reasons }) => reasons.map(({ rule }) => rule));
  return [...was!.filter((rule) => !is!.includes(rule)), ...is!.filter((rule) => !was!.includes(rule))];
};

/** One stored decision accounted for, whatever version of the rules made it. */
export const decidedAgain = (
  stored: Omit<StoredDecision, 'id' | 'answers'> & { readonly answers: Answers },
): DecidedAgain => {
  if (!versionNamed(stored.engineVersion)) {
    const reason = `this release does not know version ${stored.engineVersion} of the rules`;
    return { outcome: 'not-replayable', reason };
  }
  const absent = absentFrom(stored.facts as unknown as Readonly<Record<string, unknown>>);
  if (absent.length > 0) {
    return { outcome: 'not-replayable', reason: `the stored facts lack ${absent.join(', ')}` };
  }
  const after = replay(stored)!;
  const rules = rulesThatDiffer(stored.answers, after);
  return isSame(stored.answers, after) && rules.length === 0
    ? { outcome: 'same' }
    : { outcome: 'different', after, rules };
};
