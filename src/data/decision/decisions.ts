/** Decisions with all that is needed to replay them, the doses proposed after them, and what clinicians answered. */
import { randomUUID } from 'node:crypto';
import { and, asc, desc, eq, getTableColumns, gte, sql } from 'drizzle-orm';
import type { Answers, Contact, DecisionWord } from '#core/decision/answers.ts';
import type { WorklistReason } from '#core/decision/dose/proposal.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { DoseChangeForPatient } from '#core/prescribing/dose-change-for-patient.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { insertRows } from '../database/insert-rows.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import type { Store } from '../database/store.ts';
import { decision, proposal } from '../schema/schema.ts';
import { storeSettings } from './settings-stored.ts';

export interface NewDecision {
  readonly joint: Joint;
  readonly sessionId: string | null;
  readonly morningId: string | null;
  readonly cause: 'session' | 'morning' | 'amendment' | 'clinician';
  readonly facts: Facts;
  readonly settings: SettingValues;
  readonly engineVersion: string;
  readonly answers: Answers;
}

/** What a decision said, with its reasons: what a page shows of it. */
export interface Decision extends Answers {
  readonly id: string;
  readonly joint: Joint;
  readonly sessionId: string | null;
  readonly morningId: string | null;
  readonly cause: NewDecision['cause'];
  readonly evaluatedAt: number;
  readonly day: Day;
  readonly engineVersion: string;
}

export interface NewProposal {
  readonly itemId: string;
  readonly prescriptionId: string;
  readonly decisionId: string;
  readonly sessionId: string | null;
  readonly decision: DecisionWord;
  readonly kind: 'same' | 'step' | 'ease-back' | 'return' | 'stop';
  readonly effect: 'acts-at-once' | 'awaits-signature' | 'repeat';
  readonly contact: Contact;
  readonly worklist: readonly WorklistReason[];
  readonly preApprovalId: string | null;
  /** The version it became; null when the last dose is repeated. */
  readonly becameId: string | null;
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly cautions: readonly Caution[];
  readonly changes: readonly string[];
  readonly changeForPatient: DoseChangeForPatient;
}

export interface Proposal extends NewProposal {
  readonly id: string;
  readonly madeAt: number;
}

/** Those of one evaluation; their ids in the same order. */
export const storeDecisions = (
  access: Access,
  patientId: string,
  made: readonly NewDecision[],
): Promise<readonly string[]> =>
  access.store.write(async (tx) => {
    const own = { clinicId: access.clinicId, patientId, evaluatedAt: access.now, day: access.day };
    const used = made.map(({ settings }) => settings);
    const settingsIds = await storeSettings(tx, access, used);
    const rows = made.map(({ answers, settings: _, ...rest }, place) => {
      return { id: randomUUID(), ...own, ...rest, settingsId: settingsIds[place]!, ...answers };
    });
    insertRows(tx, decision, rows);
    if (rows.length > 0) changed(access, patientId);
    for (const { id, joint, cause } of rows)
      await auditWrite(tx, access, 'decision', { subjectId: id, patientId, detail: { joint, cause } });
    return rows.map(({ id }) => id);
  });

/** Those of one evaluation. */
export const storeProposals = (
  access: Access,
  patientId: string,
  made: readonly NewProposal[],
): Promise<void> =>
  access.store.write(async (tx) => {
    const own = { clinicId: access.clinicId, patientId, madeAt: access.now };
    const rows = made.map((row) => ({ id: randomUUID(), ...own, ...row }));
    insertRows(tx, proposal, rows);
    if (rows.length > 0) changed(access, patientId);
    for (const { id, itemId, effect } of rows)
      await auditWrite(tx, access, 'proposal', { subjectId: id, patientId, detail: { itemId, effect } });
  });

export const told = {
  id: decision.id,
  joint: decision.joint,
  sessionId: decision.sessionId,
  morningId: decision.morningId,
  cause: decision.cause,
  evaluatedAt: decision.evaluatedAt,
  day: decision.day,
  engineVersion: decision.engineVersion,
  decision: decision.decision,
  largestStep: decision.largestStep,
  today: decision.today,
  contact: decision.contact,
  reasons: decision.reasons,
};
export const decisionsFrom = and(ofPatient(decision), gte(decision.day, sql.placeholder('since')));

const decisionsSince = patientQuery((db) =>
  db.select(told).from(decision).where(decisionsFrom).orderBy(asc(decision.evaluatedAt)),
);

export const ofJoint = <R extends { readonly joint: string }>(row: R) => ({
  ...row,
  joint: row.joint as Joint,
});

/** Decisions of a patient from a day on, oldest first. */
export const decisionsOf = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly Decision[]> => (await decisionsSince(access, patientId, { since })).map(ofJoint);

/** Whose decision it is, whatever the clinic; for a command, which asks for no record by itself. */
export const ownerOfDecision = async (
  store: Store,
  id: string,
): Promise<{ readonly clinicId: string; readonly patientId: string } | null> => {
  const [row] = await store.read
    .select({ clinicId: decision.clinicId, patientId: decision.patientId })
    .from(decision)
    .where(eq(decision.id, id));
  return row ?? null;
};

/** The newest decision of each joint. */
export const newestDecisions = <D extends Pick<Decision, 'joint'>>(
  decisions: readonly D[],
): ReadonlyMap<Joint, D> => new Map(decisions.map((row) => [row.joint, row]));

const { clinicId: _clinic, patientId: _patient, ...proposalColumns } = getTableColumns(proposal);

export const proposalRows = patientQuery((db) =>
  db
    .select(proposalColumns)
    .from(proposal)
    .where(ofPatient(proposal))
    .orderBy(desc(proposal.madeAt))
    .limit(400),
);

export const proposalsOf = async (access: Access, patientId: string): Promise<readonly Proposal[]> => {
  return proposalRows(access, patientId);
};
