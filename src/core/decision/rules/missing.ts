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

/** Any but the next morning. Spelled out rather than looped: this runs for every fact of a replay. */
const isAnotherMissing = (facts: Facts): boolean =>
  facts.painBefore === null ||
  facts.painDuring === null ||
  facts.painAfter === null ||
  facts.painTwoHours === null ||
  facts.swelling === null ||
  facts.stiffnessMinutes === null ||
  facts.redFlags === null ||
  facts.repetitionsDonePercent === null;

export const missingRules = [
  {
    id: 'M1',
    title: 'An answer is missing',
    effect: { decision: 'hold' },
    // A later morning that speaks stands in for the next one.
    condition: (facts) =>
      isAnotherMissing(facts) ||
      (facts.painNextMorning === null && typeof facts.painLaterMorning !== 'number'),
    observes: requiredAnswers,
    observed: (facts) => ({
      missing: missingAnswers(facts).filter(
        (name) => name !== 'painNextMorning' || typeof facts.painLaterMorning !== 'number',
      ),
    }),
    threshold: () => 'any required answer not given',
    restsOn: 'clinic-choice',
    citations: [],
    settings: [],
    version1: {
      condition: (facts) => isAnotherMissing(facts) || facts.painNextMorning === null,
      observed: (facts) => ({ missing: missingAnswers(facts) }),
    },
  },
  {
    id: 'M1r',
    title: 'A later morning speaks for the next one',
    since: 2,
    effect: { largestStep: 'repetitions' },
    condition: (facts) => facts.painNextMorning === null && typeof facts.painLaterMorning === 'number',
    observes: ['painNextMorning', 'painLaterMorning'],
    threshold: () => 'next morning not answered, a later one answered before any new session',
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['later-morning-days'],
  },
] as const satisfies readonly Rule[];
