/** Letters of a person: drafts in versions, the words that were signed, and what was marked void. */
import { randomUUID } from 'node:crypto';
import { and, asc, desc, eq, sql } from 'drizzle-orm';
import type { Addressee, OwnSentences } from '#core/episode/letters/letter.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofClinic, ofPatient, patientQuery, prepared } from '../database/prepared.ts';
import { letterDraft, letterSignature, letterVoid } from '../schema/letters.ts';
import { writtenNow } from './episodes.ts';

export interface LetterDraft extends Addressee {
  readonly copies: string | null;
  readonly toPatient: boolean;
  readonly language: string;
  readonly noteIds: readonly string[];
  readonly own: OwnSentences;
}

interface Written {
  readonly recordedAt: number;
  readonly byName: string;
}

export interface KeptLetter {
  readonly letterId: string;
  /** How often it was saved. */
  readonly version: number;
  readonly draft: LetterDraft & Written;
  readonly signature:
    | (Written & {
        readonly day: Day;
        readonly role: string;
        readonly registration: string | null;
        readonly words: unknown;
      })
    | null;
  readonly voided: (Written & { readonly day: Day; readonly reason: string }) | null;
}

const draftRows = patientQuery((db) =>
  db
    .select()
    .from(letterDraft)
    .where(ofPatient(letterDraft))
    .orderBy(asc(letterDraft.recordedAt), asc(letterDraft.version)),
);
const signatureRows = patientQuery((db) =>
  db.select().from(letterSignature).where(ofPatient(letterSignature)),
);
const voidRows = patientQuery((db) => db.select().from(letterVoid).where(ofPatient(letterVoid)));

type DraftRow = typeof letterDraft.$inferSelect;

const draftFrom = (row: DraftRow): LetterDraft & Written => {
  const { name, role, organisation, address, copies, toPatient, language, noteIds, own } = row;
  const { recordedAt, byName } = row;
  return { name, role, organisation, address, copies, toPatient, language, noteIds, own, recordedAt, byName };
};

/** The newest first, by when each was begun. */
export const lettersOf = async (access: Access, patientId: string): Promise<readonly KeptLetter[]> => {
  const newest = new Map<string, DraftRow>();
  // By its version and not by its time: the clock may have been put back between two of them.
  for (const row of await draftRows(access, patientId))
    if (row.version > (newest.get(row.letterId)?.version ?? 0)) newest.set(row.letterId, row);
  const signatures = await signatureRows(access, patientId);
  const voids = await voidRows(access, patientId);
  return [...newest.values()].toReversed().map((row) => ({
    letterId: row.letterId,
    version: row.version,
    draft: draftFrom(row),
    signature: signatures.find(({ letterId }) => letterId === row.letterId) ?? null,
    voided: voids.find(({ letterId }) => letterId === row.letterId) ?? null,
  }));
};

export const letterOf = async (
  access: Access,
  patientId: string,
  letterId: string,
): Promise<KeptLetter | null> =>
  (await lettersOf(access, patientId)).find((one) => one.letterId === letterId) ?? null;

/** Far more than are offered: many letters go to the same few people. */
const lookedThrough = 200;

const clinicRows = prepared((db) =>
  db
    .select()
    .from(letterDraft)
    .where(ofClinic(letterDraft))
    .orderBy(desc(letterDraft.recordedAt), desc(letterDraft.version))
    .limit(lookedThrough),
);

const mostOffered = 12;

/**
 * To whom letters went before, this person's first. Of other people's letters only a practice or hospital is
 * offered: a private address stays with the person it belongs to.
 */
export const earlierAddressees = async (access: Access, patientId: string): Promise<readonly Addressee[]> => {
  const own = (await lettersOf(access, patientId)).map(({ draft }) => draft);
  const others = (await clinicRows(access.store.read, { clinicId: access.clinicId })).filter(
    ({ organisation }) => organisation !== null,
  );
  const found = new Map<string, Addressee>();
  for (const { name, role, organisation, address } of [...own, ...others]) {
    const key = JSON.stringify([name, organisation]);
    if (!found.has(key)) found.set(key, { name, role, organisation, address });
  }
  return [...found.values()].slice(0, mostOffered);
};

const signerRow = prepared((db) =>
  db
    .select({ role: letterSignature.role, registration: letterSignature.registration })
    .from(letterSignature)
    .where(and(ofClinic(letterSignature), eq(letterSignature.recordedBy, sql.placeholder('actorId'))))
    .orderBy(desc(letterSignature.recordedAt), desc(letterSignature.id))
    .limit(1),
);

/** Under the caller's last signed letter; null = there is none. */
export const signedBeforeAs = async ({ store, clinicId, actorId }: Access) =>
  (await signerRow(store.read, { clinicId, actorId }))[0] ?? null;

export interface SeenLetter {
  readonly letterId: string;
  /** The version the page showed. */
  readonly seen: number;
}

/** Whether the letter is still as it was seen, and still a draft. */
const isAsSeen = async (access: Access, patientId: string, { letterId, seen }: SeenLetter) => {
  const letter = await letterOf(access, patientId, letterId);
  return letter?.version === seen && !letter.signature && !letter.voided;
};

/** The id of the letter; null where somebody saved, signed or voided it since it was seen. A letter not seen yet is new. */
export const saveDraft = (
  access: Access,
  patientId: string,
  at: SeenLetter | null,
  draft: LetterDraft,
): Promise<string | null> =>
  access.store.write(async (tx) => {
    if (at && !(await isAsSeen(access, patientId, at))) return null;
    const letterId = at?.letterId ?? randomUUID();
    const version = (at?.seen ?? 0) + 1;
    const now = writtenNow(access, patientId);
    await tx.insert(letterDraft).values({ ...now, letterId, version, ...draft });
    const detail = { letterId, version, own: Object.keys(draft.own) };
    await auditWrite(tx, access, 'letter-draft', { subjectId: letterId, patientId, detail });
    return letterId;
  });

interface Signing {
  readonly role: string;
  readonly registration: string | null;
  readonly words: unknown;
}

/** Once; false where it is no longer as it was seen. */
export const signLetter = (
  access: Access,
  patientId: string,
  at: SeenLetter,
  signing: Signing,
): Promise<boolean> =>
  access.store.write(async (tx) => {
    if (!(await isAsSeen(access, patientId, at))) return false;
    const { letterId, seen: version } = at;
    const now = writtenNow(access, patientId);
    await tx.insert(letterSignature).values({ ...now, letterId, version, day: access.day, ...signing });
    await auditWrite(tx, access, 'letter-signature', {
      subjectId: letterId,
      patientId,
      detail: { letterId, version },
    });
    return true;
  });

/** Once; false where there is no such letter or it is void already. */
export const voidLetter = (
  access: Access,
  patientId: string,
  letterId: string,
  reason: string,
): Promise<boolean> =>
  access.store.write(async (tx) => {
    const letter = await letterOf(access, patientId, letterId);
    if (!letter || letter.voided) return false;
    const now = writtenNow(access, patientId);
    await tx.insert(letterVoid).values({ ...now, letterId, day: access.day, reason });
    await auditWrite(tx, access, 'letter-void', { subjectId: letterId, patientId, detail: { letterId } });
    return true;
  });
