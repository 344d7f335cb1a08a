/** Tokens of other programs: made once, shown once, kept as a digest, withdrawn by a row of its own. */
import { randomUUID } from 'node:crypto';
import { and, desc, eq, isNull } from 'drizzle-orm';
import type { TokenScope } from '#core/clinic/token-scopes.ts';
import type { Access } from '../access.ts';
import { makeSecret, secretDigest } from '../accounts/secret.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import type { Store } from '../database/store.ts';
import { programToken, programTokenEnd } from '../schema/schema.ts';

export interface ProgramToken {
  readonly id: string;
  readonly clinicId: string;
  readonly name: string;
  readonly scopes: readonly TokenScope[];
  /** Epoch milliseconds of the system clock. */
  readonly expiresAt: number;
}

export interface TokenLine extends ProgramToken {
  readonly madeAt: number;
  readonly madeBy: string;
  readonly endedAt: number | null;
  readonly endedBy: string | null;
}

/** So that a secret found in a log or a repository is known for what it is. */
const secretBegins = 'loadgate_';

const shape = new RegExp(`^${secretBegins}[A-Za-z0-9_-]{43}$`);

export const makeToken = (
  access: Access,
  {
    name,
    scopes,
    days,
  }: { readonly name: string; readonly scopes: readonly TokenScope[]; readonly days: number },
): Promise<{ readonly id: string; readonly secret: string; readonly expiresAt: number }> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    const secret = `${secretBegins}${makeSecret()}`;
    const expiresAt = Date.now() + days * 86_400_000;
    await tx.insert(programToken).values({
      ...{ id, clinicId: access.clinicId, name, digest: secretDigest(secret), scopes, expiresAt },
      ...{ recordedAt: access.now, recordedBy: access.actorId, byName: access.actorName },
    });
    await auditWrite(tx, access, 'program-token', { subjectId: id, detail: { scopes, days } });
    return { id, secret, expiresAt };
  });

const ofToken = {
  id: programToken.id,
  clinicId: programToken.clinicId,
  name: programToken.name,
  scopes: programToken.scopes,
  expiresAt: programToken.expiresAt,
};

const tokenRows = prepared((db) =>
  db
    .select({
      ...ofToken,
      madeAt: programToken.recordedAt,
      madeBy: programToken.byName,
      endedAt: programTokenEnd.endedAt,
      endedBy: programTokenEnd.byName,
    })
    .from(programToken)
    .leftJoin(programTokenEnd, eq(programTokenEnd.tokenId, programToken.id))
    .where(ofClinic(programToken))
    .orderBy(desc(programToken.recordedAt)),
);

/** Newest first, ended ones among them. */
export const tokensOf = async (access: Pick<Access, 'store' | 'clinicId'>): Promise<readonly TokenLine[]> =>
  tokenRows(access.store.read, { clinicId: access.clinicId });

/** False when the clinic has no such token, or it was withdrawn already. */
export const endToken = (access: Access, tokenId: string): Promise<boolean> =>
  access.store.write(async (tx) => {
    const token = (await tokensOf(access)).find(({ id }) => id === tokenId);
    if (!token || token.endedAt !== null) return false;
    await tx.insert(programTokenEnd).values({
      ...{ tokenId, clinicId: access.clinicId, endedAt: access.now },
      ...{ endedBy: access.actorId, byName: access.actorName },
    });
    await auditWrite(tx, access, 'program-token-ended', { subjectId: tokenId });
    return true;
  });

/** The token a secret belongs to; null where there is none, it was withdrawn, or its time is over. */
export const tokenBySecret = async (
  store: Store,
  secret: string,
  systemNow: number,
): Promise<ProgramToken | null> => {
  if (!shape.test(secret)) return null;
  const [row] = await store.read
    .select(ofToken)
    .from(programToken)
    .leftJoin(programTokenEnd, eq(programTokenEnd.tokenId, programToken.id))
    .where(and(eq(programToken.digest, secretDigest(secret)), isNull(programTokenEnd.tokenId)));
  return row && systemNow < row.expiresAt ? row : null;
};
