/** The check of this morning and that of the day before may both be half answered: neither takes the other's place. */
import type { MorningDraft } from './morning-draft.ts';

export interface TwoMornings {
  /** Begun and not sent, of the day that is taken up; null where that day has none. */
  readonly running: MorningDraft | null;
  readonly aside: MorningDraft | null;
}

const isOpen = (draft: MorningDraft | null | undefined): draft is MorningDraft => draft?.endedAt === null;

export const takenUp = (
  day: string,
  shown: MorningDraft | null | undefined,
  aside: MorningDraft | null,
): TwoMornings => {
  const open = [shown, aside].filter(isOpen);
  const running = open.find((draft) => draft.day === day) ?? null;
  return { running, aside: open.find((draft) => draft !== running) ?? null };
};
