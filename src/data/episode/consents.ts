/** What patients consented to, the clinic's wordings, and what ends when one is refused or withdrawn. */
import { randomUUID } from 'node:crypto';
import { and, asc, desc, eq, max } from 'drizzle-orm';
import {
  type ConsentKind,
  type ConsentRow,
  consentKinds,
  consentTitles,
  hangsOn,
  proposedWording,
  type WordingId,
} from '#core/episode/consent.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { endPrescription } from '../prescribing/prescribing.ts';
import { inForce, prescriptionsOf, unsigned } from '../prescribing/prescriptions.ts';
import { consent, consentWording } from '../schema/care.ts';
import { writtenNow } from './episodes.ts';

export const consentRows = patientQuery((db) =>
  db.select().from(consent).where(ofPatient(consent)).orderBy(asc(consent.recordedAt)),
);

/** Oldest first. */
export const consentsOf = async (access: Access, patientId: string): Promise<readonly ConsentRow[]> => {
  const rows = await consentRows(access, patientId);
  return rows.map(({ kind, act, wordingSource, wordingVersion, recordedAt, byName, reason }) => ({
    kind,
    act,
    wordingSource,
    wordingVersion,
    at: recordedAt,
    by: byName,
    reason,
  }));
};

export interface Wording extends WordingId {
  readonly kind: ConsentKind;
  readonly title: string;
  /** As the clinic wrote it; null where nobody of it has, and the wording is only a proposal. */
  readonly ownText: string | null;
}

/** The wording of each kind that holds now. */
export const wordingsOf = async (access: Pick<Access, 'store' | 'clinicId'>): Promise<readonly Wording[]> => {
  const rows = await access.store.read
    .select()
    .from(consentWording)
    .where(eq(consentWording.clinicId, access.clinicId))
    .orderBy(desc(consentWording.version));
  return consentKinds.map((kind) => {
    const own = rows.find((row) => row.kind === kind);
    const wording: WordingId = own
      ? { wordingSource: 'clinic', wordingVersion: own.version }
      : proposedWording;
    return { kind, title: consentTitles[kind], ...wording, ownText: own?.text ?? null };
  });
};

/** Whether a wording is the one that holds now, so that an answer to it counts. */
export const isCurrentWording = async (
  access: Access,
  asked: WordingId & { readonly kind: ConsentKind },
): Promise<boolean> =>
  (await wordingsOf(access)).some(
    (one) =>
      one.kind === asked.kind &&
      one.wordingSource === asked.wordingSource &&
      one.wordingVersion === asked.wordingVersion,
  );

export const writeWording = (access: Access, kind: ConsentKind, text: string): Promise<number> =>
  access.store.write(async (tx) => {
    const [last] = await tx
      .select({ version: max(consentWording.version) })
      .from(consentWording)
      .where(and(eq(consentWording.clinicId, access.clinicId), eq(consentWording.kind, kind)));
    const version = (last?.version ?? 0) + 1;
    const id = randomUUID();
    await tx.insert(consentWording).values({
      id,
      clinicId: access.clinicId,
      kind,
      version,
      text,
      recordedAt: access.now,
      recordedBy: access.actorId,
    });
    await auditWrite(tx, access, 'consent-wording', { subjectId: id, detail: { kind, version } });
    return version;
  });

/** Prescribed exercises that need the consent end, signed or not: consenting again brings none back. */
const endWhatHangsOn = async (
  access: Access,
  patientId: string,
  { kind, act }: ConsentAct,
): Promise<number> => {
  const versions = await prescriptionsOf(access, patientId);
  const hanging = [...inForce(versions), ...unsigned(versions)].filter((row) => hangsOn(row.dose, kind));
  const reason = `Consent ${act} on ${access.day}: ${consentTitles[kind].toLowerCase()}.`;
  for (const row of hanging) await endPrescription(access, patientId, row.id, reason);
  return hanging.length;
};

export interface ConsentAct extends Pick<ConsentRow, 'kind' | 'act' | 'wordingSource' | 'wordingVersion'> {
  readonly recordedVia: 'own-page' | 'clinician';
  readonly reason: string | null;
}

/** Records a word of the patient; exercises that needed a consent refused or withdrawn end in the same transaction. */
export const recordConsent = (
  access: Access,
  patientId: string,
  row: ConsentAct,
): Promise<{ readonly ended: number }> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(consent).values({ ...now, ...row });
    const ended = row.act === 'given' ? 0 : await endWhatHangsOn(access, patientId, row);
    changed(access, patientId);
    await auditWrite(tx, access, 'consent', {
      subjectId: now.id,
      patientId,
      detail: {
        kind: row.kind,
        act: row.act,
        wordingSource: row.wordingSource,
        wordingVersion: row.wordingVersion,
        ended,
      },
    });
    return { ended };
  });
