/**
 * Which sentence says a reason to the patient. Most rules have one; where a rule speaks for different things
 * in different people, or did in an earlier version, each has its own, so that no sentence says what was not so.
 */
import type { Reason } from './answers.ts';
import type { RuleId } from './rules/table.ts';

const otherSentences = ['P1-near-usual', 'P5-once', 'P5-later', 'P5h-later', 'F1-rest'] as const;
export type RuleSentence = RuleId | (typeof otherSentences)[number];

/** Every sentence that may say a rule. */
export const sentencesOf = (rule: RuleId): readonly RuleSentence[] => [
  rule,
  ...otherSentences.filter((one) => one.startsWith(`${rule}-`)),
];

type Said = Pick<Reason, 'observed' | 'effect'>;

/** A later morning speaks where the next one was left out. */
const isLater = ({ observed }: Said): boolean => typeof observed.painLaterMorning === 'number';

const choose = {
  P1: ({ effect }: Said) => (effect.contact === 'routine' ? 'P1-near-usual' : 'P1'),
  // Version 1 knew no repetition, and what it found is told by the milder sentence.
  P5: (said: Said) => (said.observed.twoOverBefore === true ? 'P5' : isLater(said) ? 'P5-later' : 'P5-once'),
  P5h: (said: Said) => (isLater(said) ? 'P5h-later' : 'P5h'),
  // Version 1 rested the joint in a long flare.
  F1: ({ effect }: Said) => (effect.today === 'rest-this-joint' ? 'F1-rest' : 'F1'),
} as const satisfies Partial<Record<RuleId, (said: Said) => RuleSentence>>;

export const ruleSentence = (rule: RuleId, said: Said): RuleSentence =>
  rule in choose ? choose[rule as keyof typeof choose](said) : rule;
