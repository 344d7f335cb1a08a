/**
 * Unknown never progresses. "Asked and not answered" is its own fact and never reads as zero;
 * "not-applicable" is not missing. The clinician's knee test is never a missing answer.
 */
import type { Facts } from '../facts/facts.ts';
import type { Rule } from './rule.ts';

export const requiredAnswers = [
  'painBefore',
  'painDuring',
  'painAfter',
  'painTwoHours',
  'painNextMorning',
  'swelling',
  'stiffnessMinutes',
  'redFlags',
  'repetitionsDonePercent',
] as const satisfies readonly (keyof Facts)[];

const missingAnswers = (facts: Facts): readonly (typeof requiredAnswers)[number][] =>
  requiredAnswers.filter((name) => facts[name] === null);

export const missingRules = [
  {
    id: 'M1',
    title: 'An answer is missing',
    effect: { decision: 'hold' },
    // Spelled out rather than looped: this runs for every fact of a replay.
    condition: (facts) =>
      facts.painBefore === null ||
      facts.painDuring === null ||
      facts.painAfter === null ||
      facts.painTwoHours === null ||
      facts.painNextMorning === null ||
      facts.swelling === null ||
      facts.stiffnessMinutes === null ||
      facts.redFlags === null ||
      facts.repetitionsDonePercent === null,
    observes: requiredAnswers,
    observed: (facts) => ({ missing: missingAnswers(facts) }),
    threshold: () => 'any required answer not given',
    restsOn: 'clinic-choice',
    citations: [],
    settings: [],
  },
] as const satisfies readonly Rule[];
