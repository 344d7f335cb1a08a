/** What one rule of the table is. Rules are data; decide.ts reads them and knows none by name. */
import type { Citation } from '#core/sources/citation.ts';
import type { ScreeningSource } from '#core/sources/screening.ts';
import type { SymptomSource } from '#core/sources/symptoms.ts';
import type { Contact, DecisionWord, Step, Today } from '../answers.ts';
import type { Facts } from '../facts/facts.ts';
import type { EngineSettingId, EngineSettingValues, EngineVersion } from '../settings.ts';

/** The most a rule that fires leaves of each answer it names. */
export interface Effect {
  readonly decision?: DecisionWord;
  readonly largestStep?: Step;
  readonly today?: Today;
  readonly contact?: Contact;
}

/** Values several rules read, worked out once for each evaluation. */
export interface Derived {
  /** Highest pain score present; null when none was given. */
  readonly peak: number | null;
  /** Usual pain, 0 while none is set. */
  readonly usual: number;
  /** Top of the usual band: usual pain unless a clinician widened it; 0 while none is set. */
  readonly top: number;
}

/** What a rule says in one version of the table. */
export interface RuleForm {
  readonly effect: Effect;
  /** For the rules whose effect depends on what was found; `effect` then shows the most cautious one. */
  readonly effectFor?: (facts: Facts, derived: Derived, settings: EngineSettingValues) => Effect;
  readonly condition: (facts: Facts, derived: Derived, settings: EngineSettingValues) => boolean;
  /** Facts shown as observed when the rule fires. */
  readonly observes: readonly (keyof Facts | 'peak')[];
  /** In place of `observes` where a list of names does not say it. */
  readonly observed?: (facts: Facts, derived: Derived) => Readonly<Record<string, unknown>>;
  /** The threshold in words, with the figures in force. */
  readonly threshold: (settings: EngineSettingValues) => string;
  /** What the rule leans on: a source, or a choice of the clinic although sources stand near it. */
  readonly restsOn: 'source' | 'clinic-choice';
  /** Which of them a finding leans on, where that is not the first. */
  readonly supportFor?: (facts: Facts) => SymptomSource | ScreeningSource | null;
  readonly settings: readonly EngineSettingId[];
}

/** A rule as its newest version has it; what an earlier one read otherwise stands below. */
export interface Rule extends RuleForm {
  readonly id: string;
  readonly title: string;
  readonly citations: readonly (Citation & { readonly source: SymptomSource | ScreeningSource })[];
  /** First version of the table the rule stands in; left out = 1. */
  readonly since?: EngineVersion;
  /** From this version on the rule is silent while usual pain is not known. */
  readonly silentWithoutUsualSince?: EngineVersion;
  /** What version 1 had in another form. */
  readonly version1?: Partial<RuleForm>;
}

/** A score reaches a height; a missing score never does, and the rule for missing answers says so instead. */
export const reaches = (score: number | null | 'not-applicable', height: number): boolean =>
  typeof score === 'number' && score >= height;
