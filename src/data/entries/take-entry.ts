/** Stores an entry and evaluates the record in one transaction: no entry stands without its decision. */
import { flagsWithLimb } from '#core/prescribing/occlusion/limb-check.ts';
import type { MorningEntry, SessionEntry, TwoHoursEntry } from '#core/record/entries.ts';
import type { EnteredAs } from '#core/record/entry-words.ts';
import { daysBetween } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { reportEntrySigns } from '../danger/warning-signs.ts';
import { onWholeRecord } from '../decision/decide-queries.ts';
import { type Cause, evaluateRecord } from '../decision/evaluate.ts';
import { storeMorning, storeSession, storeTwoHours } from './entries.ts';
import type { Stored } from './known-entries.ts';

type EntrySigns = Parameters<typeof reportEntrySigns>[2];

/** Who wrote a sign down, where it was not the patient's own phone. */
const sourceOf: Readonly<Partial<Record<EnteredAs, EntrySigns['source']>>> = {
  'clinic-by-phone': 'telephone',
  'clinic-supervised': 'clinician',
};

const signsOf = (
  { entryId, amends, enteredAs }: SessionEntry | MorningEntry | TwoHoursEntry,
  flags: readonly string[] | null,
): EntrySigns => ({
  entryId,
  amends: amends ?? null,
  flags: (flags ?? []) as EntrySigns['flags'],
  source: (enteredAs && sourceOf[enteredAs]) ?? 'patient',
});

const evaluated = (
  access: Access,
  patientId: string,
  store: () => Promise<Stored>,
  told: EntrySigns,
  cause: (id: string) => Cause,
): Promise<Stored> =>
  access.store.write(async () => {
    const stored = await store();
    if (stored.kind === 'known') return stored;
    await onWholeRecord(access, patientId, async () => {
      // A sign is written down whatever becomes of the entry that told it: in doubt, refused, or without its session.
      await reportEntrySigns(access, patientId, told);
      if (stored.kind === 'stored') await evaluateRecord(access, patientId, cause(stored.id));
    });
    return stored;
  });

export const takeSession = (access: Access, patientId: string, entry: SessionEntry): Promise<Stored> =>
  evaluated(
    access,
    patientId,
    () => storeSession(access, patientId, entry),
    signsOf(entry, flagsWithLimb(entry.redFlags, entry.limbChecks ?? [])),
    (id) => ({ cause: entry.amends ? 'amendment' : 'session', sessionId: id, morningId: null }),
  );

export const takeMorning = (access: Access, patientId: string, entry: MorningEntry): Promise<Stored> =>
  evaluated(
    access,
    patientId,
    // Late is what was answered late; what waited for a signal was not.
    () =>
      storeMorning(access, patientId, entry, daysBetween(entry.day, dayAt(entry.answeredAt, entry.zone)) > 0),
    signsOf(entry, entry.redFlags),
    (id) => ({ cause: entry.amends ? 'amendment' : 'morning', sessionId: null, morningId: id }),
  );

export const takeTwoHours = (access: Access, patientId: string, entry: TwoHoursEntry): Promise<Stored> =>
  evaluated(
    access,
    patientId,
    () => storeTwoHours(access, patientId, entry),
    signsOf(entry, entry.redFlags),
    () => ({ cause: 'session', sessionId: null, morningId: null }),
  );
