/** How far a rule rests on what was published, and what of it nobody has shown. */
import type { Rule } from './rule.ts';

/** By the figure of the rule: printed in a source, recalled of one, chosen near one, chosen beside some, or of none. */
export type RestsOn = 'published' | 'from-memory' | 'near-published' | 'chosen' | 'no-source';

export const restsOnWhat = ({ citations }: Pick<Rule, 'citations'>): RestsOn => {
  if (citations.length === 0) return 'no-source';
  const printed = citations.filter(({ number }) => number === 'from-source');
  if (printed.some(({ mark }) => mark !== 'memory')) return 'published';
  if (printed.length > 0) return 'from-memory';
  return citations.some(({ number }) => number === 'near-source') ? 'near-published' : 'chosen';
};

export type NotProven =
  | 'figure-chosen'
  | 'remembered'
  | 'second-hand'
  | 'nobody-studied'
  | 'others-studied'
  | 'no-source'
  | 'no-clinician'
  | 'no-patients';

/** Advice and reviews studied nobody; their rows say so first. */
const studiedNobody = /^nobody\b/;

/** The last two hold of every rule: its tests show that it does what its words say and not that the words are right. */
export const notProvenOf = (rule: Pick<Rule, 'citations'>): readonly NotProven[] => {
  const { citations } = rule;
  const found = restsOnWhat(rule);
  const isAllAdvice = citations.every(({ studied }) => studiedNobody.test(studied));
  return [
    ...(found === 'no-source' ? (['no-source'] as const) : []),
    ...(found === 'near-published' || found === 'chosen' ? (['figure-chosen'] as const) : []),
    ...(citations.some(({ mark }) => mark === 'memory') ? (['remembered'] as const) : []),
    ...(citations.some(({ mark }) => mark === 'second-hand') ? (['second-hand'] as const) : []),
    ...(citations.length > 0 ? ([isAllAdvice ? 'nobody-studied' : 'others-studied'] as const) : []),
    'no-clinician',
    'no-patients',
  ];
};
