/** Why something was decided, as the patient is told it: by the rules that made the decision, in their own words. */
import { explainToPatient } from '#core/decision/explain.ts';
import { leftOutRule } from '#core/decision/left-out.ts';
import { ruleSentence } from '#core/decision/patient-sentence.ts';
import type { RuleId } from '#core/decision/rules/table.ts';
import type { SessionRecord } from '#core/record/record.ts';
import type { Decision } from '#data/decision/decisions.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { leftOutText, ruleText } from '#messages/decisions.ts';
import type { Text } from '#messages/text.ts';

const reasonText = (
  rule: RuleId,
  { joint, reasons }: Pick<Decision, 'joint' | 'reasons'>,
  session: SessionRecord | undefined,
  versions: readonly Prescription[],
): Text => {
  const open = session ? leftOutRule(rule, { session, joint, versions }) : null;
  if (open) return leftOutText(open);
  const reason = reasons.find((one) => one.rule === rule);
  return ruleText(reason ? ruleSentence(rule, reason) : rule);
};

/** Empty where no rule held anything back. `sessions` holds the one that was judged, `versions` what it was done by. */
export const reasonsTold = (
  row: Decision,
  sessions: readonly SessionRecord[],
  versions: readonly Prescription[],
): readonly Text[] => {
  const judged = sessions.find(({ id }) => id === row.sessionId);
  return explainToPatient(row).because.map((rule) => reasonText(rule, row, judged, versions));
};
