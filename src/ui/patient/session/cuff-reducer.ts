/** What happens with a cuff or wrap. null for an event that is not about it. */
import { stopped, withItem, withSet } from './change.ts';
import { type SessionDraft, setOf } from './draft.ts';
import type { SessionEvent } from './events.ts';
import { cuffOff, cuffOn } from './restriction.ts';

export const cuffReducer = (draft: SessionDraft, event: SessionEvent): SessionDraft | null => {
  switch (event.type) {
    case 'cuff-on':
      return withItem(draft, event.item, (item) => cuffOn(item, event.now));
    case 'cuff-down':
      return withItem(draft, event.item, (item) => cuffOff(item, event.now));
    case 'cuff-stop': {
      const item = draft.items[event.item];
      if (!item) return draft;
      // Taken off before the last set was done: why is asked once it is off.
      const isEarly = event.set < item.dose.sets || setOf(item, event.set).finishedAt === null;
      const ended = isEarly ? withSet(draft, event, stopped(draft, event)) : draft;
      return {
        ...withItem(ended, event.item, (one) => ({ ...one, leftAt: event.set })),
        step: `cuff-off:${event.item}`,
      };
    }
    case 'cuff-off': {
      const off = withItem(draft, event.item, (item) => cuffOff(item, event.now));
      // Off without ever having been on is nothing to look at fingers or toes for.
      return off.items[event.item]?.restrictions.length ? { ...off, step: `limb:${event.item}` } : off;
    }
    case 'limb':
      return withItem(draft, event.item, (item) => {
        const { sign, answer } = event;
        return event.isLater
          ? { ...item, signsLater: { ...item.signsLater, [sign]: answer } }
          : { ...item, signs: { ...item.signs, [sign]: answer }, limb: null };
      });
    case 'limb-again':
      return withItem(draft, event.item, (item) => ({ ...item, signsLater: item.signsLater ?? {} }));
    case 'limb-wait':
      return {
        ...withItem(draft, event.item, ({ signsLater: _, ...item }) => item),
        step: `limb-later:${event.item}`,
      };
    default:
      return null;
  }
};
