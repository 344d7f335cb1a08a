/** What clinicians answered to decisions: records of their own, never an edit of a decision. */
import { randomUUID } from 'node:crypto';
import { desc } from 'drizzle-orm';
import type { DecisionWord } from '#core/decision/answers.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { decisionResponse } from '../schema/schema.ts';

export interface DecisionResponse {
  readonly id: string;
  readonly decisionId: string;
  readonly kind: 'accept' | 'override';
  readonly decision: DecisionWord | null;
  readonly reason: string;
  readonly until: Day | null;
  readonly answeredAt: number;
  readonly answeredName: string;
}

export const decisionResponseRows = patientQuery((db) =>
  db
    .select()
    .from(decisionResponse)
    .where(ofPatient(decisionResponse))
    .orderBy(desc(decisionResponse.answeredAt)),
);

/** Newest first per decision. */
export const responsesOf = async (
  access: Access,
  patientId: string,
): Promise<readonly DecisionResponse[]> => {
  const rows = await decisionResponseRows(access, patientId);
  return rows.map(({ clinicId: _clinic, patientId: _patient, answeredBy: _by, ...row }) => row);
};

export const respond = (
  access: Access,
  patientId: string,
  row: Pick<DecisionResponse, 'decisionId' | 'kind' | 'decision' | 'reason' | 'until'>,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(decisionResponse).values({
      id,
      clinicId: access.clinicId,
      patientId,
      ...row,
      answeredAt: access.now,
      answeredBy: access.actorId,
      answeredName: access.actorName,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'decision-response', {
      subjectId: id,
      patientId,
      detail: { kind: row.kind },
    });
    return id;
  });
