/** The next dose of every line of an evaluation. */
import type { PatientRecord } from '../model/record.ts';
import type { DoseProposal } from './dose/proposal.ts';
import { toleratedDoses } from './dose/tolerated.ts';
import { type DoseQuestion, nextDose } from './next-dose.ts';
import type { Evaluation } from './scope.ts';

/** What the caller knows of a line beside the record. */
export type LineContext = Omit<DoseQuestion, 'record' | 'line' | 'at' | 'flareDays' | 'tolerated'>;

/** Proposals for every line of an evaluation. */
export const nextDoses = (
  record: PatientRecord,
  evaluation: Evaluation,
  contextOf: (itemId: string) => LineContext,
): ReadonlyMap<string, DoseProposal> => {
  const flareDays = new Map(evaluation.joints.map((one) => [one.joint, one.facts.flareDays]));
  return new Map(
    evaluation.lines.map((line) => {
      const context = contextOf(line.itemId);
      const tolerated = toleratedDoses(record, line.itemId, line.gatedBy, evaluation.at, context.choices);
      const longest = Math.max(0, ...line.gatedBy.map((joint) => flareDays.get(joint) ?? 0));
      const question = { ...context, record, line, at: evaluation.at, flareDays: longest, tolerated };
      return [line.itemId, nextDose(question)] as const;
    }),
  );
};
