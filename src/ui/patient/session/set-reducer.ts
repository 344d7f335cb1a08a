/** What happens in a set. null for an event that is not about sets. */
import { forward, withItem, withSet } from './change.ts';
import { type SessionDraft, setOf } from './draft.ts';
import type { SessionEvent } from './events.ts';

export const setReducer = (draft: SessionDraft, event: SessionEvent): SessionDraft | null => {
  switch (event.type) {
    case 'count':
      return withSet(draft, event, { repetitions: event.repetitions, lostCount: false });
    case 'set-done': {
      const item = draft.items[event.item];
      if (!item) return draft;
      // Going back and pressing again does not start the rest anew.
      const finishedAt = setOf(item, event.set).finishedAt ?? event.now;
      const lost = event.lostCount ? { repetitions: null, lostCount: true } : {};
      const done = withSet(draft, event, { ...lost, isStopped: false, finishedAt });
      return forward(
        draft,
        withItem(done, event.item, (one) => ({ ...one, leftAt: null })),
      );
    }
    case 'set-stopped':
      return forward(
        draft,
        withItem(withSet(draft, event, { isStopped: true, finishedAt: event.now }), event.item, (item) => ({
          ...item,
          leftAt: event.set,
        })),
      );
    case 'reserve':
      return withSet(draft, event, { reserve: event.reserve });
    case 'stop-reason':
      return withSet(draft, event, { stopReason: event.reason });
    case 'stop-done':
      return forward(
        draft,
        withItem(draft, event.item, (item) => ({
          ...item,
          leftAt: event.isLeft ? event.set : item.dose.method === 'occlusion' ? item.leftAt : null,
        })),
      );
    default:
      return null;
  }
};
