/**
 * What a language consists of. The keys come from the core wherever the core has them; where a sentence
 * belongs to a page or to the server alone, English names them. A key left out, or one too many, does not compile.
 */

import type { DecisionWord } from '#core/decision/answers.ts';
import type { LeftOutRule } from '#core/decision/left-out.ts';
import type { RuleSentence } from '#core/decision/patient-sentence.ts';
import type { ConsentKind } from '#core/episode/consent.ts';
import type { ExerciseId } from '#core/exercises/ids.ts';
import type { OcclusionCheckId, PlainCautionId, UncheckedThing } from '#core/prescribing/cautions/ids.ts';
import type { LimitedBy } from '#core/prescribing/cautions/patient-caution.ts';
import type { ScreeningDetailKey } from '#core/screening/detail-keys.ts';
import type { ScreeningItemId } from '#core/screening/items.ts';
import type { pages } from './en/pages.ts';
import type { calendar } from './en/sentences/calendar.ts';
import type { danger } from './en/sentences/danger.ts';
import type { doseChanges } from './en/sentences/dose-changes.ts';
import type { hours } from './en/sentences/hours.ts';
import type { planPaper } from './en/sentences/papers/plan.ts';
import type { recordPaper } from './en/sentences/papers/record.ts';
import type { readMe } from './en/sentences/read-me.ts';
import type { ready } from './en/sentences/ready.ts';
import type { refusals } from './en/sentences/refusals.ts';
import type { selfManagement } from './en/sentences/self-management.ts';
import type { HoldCode } from './hold-code.ts';
import type { ExerciseSentences, Same, Sentence } from './sentence.ts';
import type { Grammar } from './translate.ts';

type By<Key extends string> = Readonly<Record<Key, Sentence>>;

/** Sentences of the core and of the server, by area and key. */
export interface Sentences {
  readonly exercises: Readonly<Record<ExerciseId, ExerciseSentences>>;
  readonly cautions: By<PlainCautionId | 'blood-pressure-numbers'>;
  /** What nobody has checked, and the sentence around it. */
  readonly unchecked: By<UncheckedThing | 'not-checked'>;
  readonly limits: By<LimitedBy>;
  readonly 'occlusion-checks': By<OcclusionCheckId>;
  readonly decisions: By<DecisionWord>;
  readonly rules: By<RuleSentence>;
  readonly 'left-out': By<LeftOutRule>;
  readonly holds: By<HoldCode>;
  readonly danger: Same<typeof danger>;
  readonly 'dose-changes': Same<typeof doseChanges>;
  readonly 'screening-questions': By<ScreeningItemId>;
  readonly 'screening-details': By<ScreeningDetailKey>;
  readonly consents: By<ConsentKind>;
  readonly refusals: Same<typeof refusals>;
  /** What a clinician may start a message from. */
  readonly ready: Same<typeof ready>;
  readonly 'self-management': Same<typeof selfManagement>;
  readonly 'plan-paper': Same<typeof planPaper>;
  readonly 'record-paper': Same<typeof recordPaper>;
  readonly hours: Same<typeof hours>;
  readonly calendar: Same<typeof calendar>;
  readonly 'read-me': Same<typeof readMe>;
}

export interface Language {
  readonly forms: Grammar['forms'];
  readonly sentences: Sentences;
  /** Words of the pages, by key. */
  readonly pages: Same<typeof pages>;
}
