/** A session that lies open and is not gone on with: it can be sent as it stands or thrown away. Pure. */
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { isRest, mostCautiousToday } from '#core/decision/left-of-today.ts';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { hasSetsLeft, type ItemDraft, type SessionDraft } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import { isOfEarlierDay } from './away.ts';

export type EndedBy = 'another-day' | 'plan-changed';

type Plan = Pick<TodayView, 'exercises' | 'painLookups' | 'isStopped'>;

const hasWorkAhead = (item: ItemDraft): boolean => item.leftOut === null && hasSetsLeft(item);

/** What this draft knows of the dose: one begun by an earlier release may lack a field of today's. */
const isSameDose = (before: Dose, now: Dose): boolean =>
  Object.entries(before).every(
    ([field, value]) => JSON.stringify(now[field as keyof Dose]) === JSON.stringify(value),
  );

const isStillPlanned = ({ planned, prescriptionId }: ItemDraft, now: TodayExercise | undefined): boolean => {
  if (now?.prescriptionId !== prescriptionId) return false;
  if (isRest(now.today)) return false;
  if (now.today === 'bad-day' && !planned.isEasierSession) return false;
  return isSameDose(planned.dose, planned.isEasierSession ? now.badDay : now.dose);
};

/** For some answer to "pain now" less is left than when the session was begun. */
const isStricter = (before: PainLookup, now: PainLookup | undefined): boolean =>
  now !== undefined &&
  ((now.acceptablePainLimit ?? 0) < (before.acceptablePainLimit ?? 0) ||
    before.byPain.some((today, pain) => mostCautiousToday([now.byPain[pain] ?? today, today]) !== today));

const isPlanChanged = (draft: SessionDraft, view: Plan): boolean => {
  const ahead = draft.items.filter(hasWorkAhead);
  if (ahead.length === 0) return false;
  const now = (item: ItemDraft) => view.exercises.find(({ itemId }) => itemId === item.itemId);
  return (
    view.isStopped ||
    ahead.some((item) => !isStillPlanned(item, now(item))) ||
    draft.painLookups.some((before) =>
      isStricter(
        before,
        view.painLookups.find(({ joint }) => joint === before.joint),
      ),
    )
  );
};

/** null = it is gone on with. A cuff that is on comes off first, whatever has changed. */
export const endedBy = (
  draft: SessionDraft | null | undefined,
  view: Plan,
  { day, now }: { readonly day: string; readonly now: number },
): EndedBy | null => {
  if (!draft || draft.endedAt !== null || draft.items.some(isCuffOn)) return null;
  if (isOfEarlierDay(draft, day, now)) return 'another-day';
  return isPlanChanged(draft, view) ? 'plan-changed' : null;
};
