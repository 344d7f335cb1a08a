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
  /** Says nothing while usual pain is not known. */
  readonly isSilentWithoutUsual?: boolean;
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

/** A source a rule leans on. */
interface Support extends Citation {
  readonly source: SymptomSource | ScreeningSource;
  /** Whom the source studied: they may be far from the person of the decision. "nobody" where it is advice. */
  readonly studied: string;
  /** The rule's number is the one printed there, was chosen near it, or is a choice of which the source gives none. */
  readonly number: 'from-source' | 'near-source' | 'none';
}

/** A rule as its newest version has it; what an earlier one read otherwise stands below. */
export interface Rule extends RuleForm {
  readonly id: string;
  readonly title: string;
  /** First version of the table the rule stands in. */
  readonly since: EngineVersion;
  readonly citations: readonly Support[];
  /** What it read otherwise up to a version, that one included. */
  readonly upTo?: Readonly<Partial<Record<EngineVersion, Partial<RuleForm>>>>;
}

/** A score reaches a height; a missing score never does, and the rule for missing answers says so instead. */
export const reaches = (score: number | null | 'not-applicable', height: number): boolean =>
  typeof score === 'number' && score >= height;
