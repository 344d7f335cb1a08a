/** Who opened a record, for the patient: one line a person and day, from the audit chain. */
import { and, desc, eq, gte, inArray, ne } from 'drizzle-orm';
import type { Day } from '#core/day.ts';
import { recordKeepingChoices } from '#core/record-keeping/choices.ts';
import type { Access } from './access.ts';
import { choiceValue } from './choices.ts';
import { dayAt } from './civil-time.ts';
import { audit, authUser, clinic } from './schema/schema.ts';

export interface OpeningLine {
  readonly day: Day;
  /** null = a person the clinic no longer lists, or the product itself. */
  readonly name: string | null;
  readonly lastAt: number;
  readonly reads: number;
  readonly writes: number;
  /** Opened from outside the care team, with a reason. */
  readonly withReason: boolean;
}

interface Seen {
  readonly at: number;
  readonly actorId: string;
  readonly act: string;
  readonly subject: string;
}

/** Newest first; a person's own openings are left out. */
export const groupOpenings = (
  rows: readonly Seen[],
  zone: string,
  names: ReadonlyMap<string, string>,
): readonly OpeningLine[] => {
  const lines = new Map<string, OpeningLine>();
  for (const row of rows) {
    const day = dayAt(row.at, zone);
    const known = lines.get(`${day} ${row.actorId}`);
    const isWrite = row.act === 'write';
    lines.set(`${day} ${row.actorId}`, {
      day,
      name: names.get(row.actorId) ?? null,
      lastAt: Math.max(known?.lastAt ?? 0, row.at),
      reads: (known?.reads ?? 0) + (isWrite ? 0 : 1),
      writes: (known?.writes ?? 0) + (isWrite ? 1 : 0),
      withReason: (known?.withReason ?? false) || row.subject === 'emergency-opening',
    });
  }
  return [...lines.values()].sort((a, b) => b.lastAt - a.lastAt);
};

/** `ownId` is the patient's own sign-in, whose openings are not news to them. */
export const recordOpenings = async (
  access: Access,
  patientId: string,
  ownId: string,
): Promise<readonly OpeningLine[]> => {
  const years = await choiceValue(access, recordKeepingChoices, 'audit-retention-years');
  const since = access.now - years * 365.25 * 86_400_000;
  const rows = await access.store.read
    .select({ at: audit.at, actorId: audit.actorId, act: audit.act, subject: audit.subject })
    .from(audit)
    .where(
      and(
        eq(audit.clinicId, access.clinicId),
        eq(audit.patientId, patientId),
        ne(audit.actorId, ownId),
        inArray(audit.act, ['read', 'write']),
        gte(audit.at, since),
      ),
    )
    .orderBy(desc(audit.at))
    .limit(20_000);
  const [own] = await access.store.read
    .select({ zone: clinic.zone })
    .from(clinic)
    .where(eq(clinic.id, access.clinicId));
  const users = await access.store.read
    .select({ id: authUser.id, name: authUser.name })
    .from(authUser)
    .where(eq(authUser.clinicId, access.clinicId));
  return groupOpenings(rows, own?.zone ?? 'UTC', new Map(users.map((user) => [user.id, user.name])));
};
