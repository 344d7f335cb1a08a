/** Which session of today can be put right from here: the newest that is known in words and that nobody amended. Pure. */
import type { SentSession } from '#api/patient/today-view.ts';
import type { Saved } from '../outbox/outbox.ts';
import { didWork, type SessionDraft } from '../session/draft.ts';
import type { sessionEntryOf } from '../session/entry.ts';
import type { DayView } from '../view-on-day.ts';

/** What was just sent is still known to this page; once it is left, only the clinic can read it back. */
const fromDraft = ({ draft, entryOf }: Known, day: string): SentSession | null =>
  entryOf && draft?.endedAt != null && draft.day === day && !draft.stoppedByFlag && didWork(draft)
    ? {
        entry: entryOf(draft, draft.endedAt),
        titles: Object.fromEntries(draft.items.map(({ prescriptionId, title }) => [prescriptionId, title])),
      }
    : null;

export interface Known {
  readonly view: Pick<DayView, 'day' | 'clinicDay' | 'sent'>;
  readonly entries: readonly Saved[];
  readonly draft: SessionDraft | null | undefined;
  /** Comes with the pages that ask; left out until then. */
  readonly entryOf?: typeof sessionEntryOf | undefined;
  /** Put right from this page before. */
  readonly corrected: SentSession | null;
}

/** null where nothing was sent, it is another day at the clinic, or the newest is known to the clinic alone. */
export const sessionToCorrect = (at: Known): SentSession | null => {
  const { view, entries, corrected } = at;
  if (view.clinicDay !== view.day) return null;
  const known = [corrected, view.sent ?? null, fromDraft(at, view.day)].filter((one) => one !== null);
  const sentFromHere = entries.filter(({ status }) => status !== 'aside').map(({ amends }) => amends);
  const amended = new Set([...sentFromHere, ...known.map(({ entry }) => entry.amends)]);
  return known.find(({ entry }) => entry.day === view.day && !amended.has(entry.entryId)) ?? null;
};
