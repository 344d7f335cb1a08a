/** What is behind each rule, by its name; read by the rules pages. */
import type { RuleCounts } from './proof-row.ts';
import { proofRows, proofRun } from './rule-proof.ts';

interface RuleProof extends RuleCounts {
  readonly tests: number;
  /** Where they stand. */
  readonly file: string;
  readonly digest: string;
}

export { proofRun };

export const ruleProofs: readonly RuleProof[] = proofRows.map(
  ([rule, group, tests, fired, firedUnchanged, decidedUnchanged, digest]) => ({
    ...{ rule, tests, fired, firedUnchanged, decidedUnchanged, digest },
    file: `tests/core/decision/rules/${group}/${rule.toLowerCase()}.test.ts`,
  }),
);
