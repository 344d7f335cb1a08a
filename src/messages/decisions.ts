/** Decisions, the reasons for them, and exercises that rest, as the patient reads them. */

import type { DecisionWord } from '#core/decision/answers.ts';
import type { LeftOutRule } from '#core/decision/left-out.ts';
import type { RuleSentence } from '#core/decision/patient-sentence.ts';
import { textOf } from './every-language.ts';
import type { HoldCode } from './hold-code.ts';
import type { Text } from './text.ts';

export const decisionText = (decision: DecisionWord): Text => textOf('decisions', decision);

/** Why, in one plain sentence. */
export const ruleText = (rule: RuleSentence): Text => textOf('rules', rule);

/** Why, where the rule spoke because a question was left open. */
export const leftOutText = (rule: LeftOutRule): Text => textOf('left-out', rule);

export const holdText = (code: HoldCode): Text => textOf('holds', code);
