/** The next dose of every line of an evaluation. */
import type { PatientRecord } from '../record/record.ts';
import type { DoseProposal } from './dose/proposal.ts';
import { toleratedDoses } from './dose/tolerated.ts';
import { type DoseQuestion, nextDose } from './next-dose.ts';
import type { Evaluation } from './scope.ts';

/** What the caller knows of a line beside the record. */
export type ItemContext = Omit<DoseQuestion, 'record' | 'item' | 'at' | 'flareDays' | 'tolerated'>;

/** Proposals for every line of an evaluation. */
export const nextDoses = (
  record: PatientRecord,
  evaluation: Evaluation,
  contextOf: (itemId: string) => ItemContext,
): ReadonlyMap<string, DoseProposal> => {
  const flareDays = new Map(evaluation.joints.map((one) => [one.joint, one.facts.flareDays]));
  return new Map(
    evaluation.items.map((item) => {
      const context = contextOf(item.itemId);
      const tolerated = toleratedDoses(
        record,
        item.itemId,
        item.limitingJoints,
        evaluation.at,
        context.settings,
      );
      const longest = Math.max(0, ...item.limitingJoints.map((joint) => flareDays.get(joint) ?? 0));
      const question = { ...context, record, item, at: evaluation.at, flareDays: longest, tolerated };
      return [item.itemId, nextDose(question)] as const;
    }),
  );
};
