/** What happens in a set. null for an event that is not about sets. */
import { forward, withItem, withSet } from './change.ts';
import { type SessionDraft, scoreKey, setOf } from './draft.ts';
import type { SessionEvent } from './events.ts';
import { highestHurt } from './left-out.ts';

/** What was said at the sets is the highest pain, until that is asked by itself; what is taken back there is not. */
const withHighest = (before: SessionDraft, after: SessionDraft): SessionDraft => {
  const scores = { ...after.scores };
  for (const joint of after.joints) {
    const [was, is] = [highestHurt(before, joint), highestHurt(after, joint)];
    if (is !== undefined) scores[scoreKey('during', joint)] = is;
    else if (was !== undefined) delete scores[scoreKey('during', joint)];
  }
  return { ...after, scores };
};

type Event<T extends SessionEvent['type']> = Extract<SessionEvent, { readonly type: T }>;

const setDone = (draft: SessionDraft, event: Event<'set-done'>): SessionDraft => {
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
};

const setStopped = (draft: SessionDraft, event: Event<'set-stopped'>): SessionDraft => {
  // Stopped after a slip was taken back: the count that was pressed by mistake is not what was done.
  const uncounted = { repetitions: null, lostCount: false, asksCount: true };
  const ended = withSet(draft, event, { isStopped: true, ...uncounted, finishedAt: event.now });
  return forward(
    draft,
    withItem(ended, event.item, (item) => ({ ...item, leftAt: event.set })),
  );
};

/** Why it was stopped; how much the joint hurt is asked of the joint alone. */
const reasonGiven = (draft: SessionDraft, event: Event<'stop-reason'>): SessionDraft => {
  const hurt = event.reason === 'joint-pain' ? {} : { hurt: {} };
  return forward(draft, withHighest(draft, withSet(draft, event, { stopReason: event.reason, ...hurt })));
};

const hurtGiven = (draft: SessionDraft, event: Event<'hurt'>): SessionDraft => {
  const item = draft.items[event.item];
  if (!item) return draft;
  const hurt = { ...setOf(item, event.set).hurt, [event.joint]: event.score };
  return forward(draft, withHighest(draft, withSet(draft, event, { hurt })));
};

export const setReducer = (draft: SessionDraft, event: SessionEvent): SessionDraft | null => {
  switch (event.type) {
    case 'count': {
      const { repetitions } = event;
      return withSet(draft, event, { repetitions, lostCount: repetitions === null });
    }
    case 'set-done':
      return setDone(draft, event);
    case 'set-stopped':
      return setStopped(draft, event);
    case 'reserve':
      return withSet(draft, event, { reserve: event.reserve });
    case 'stop-reason':
      return reasonGiven(draft, event);
    case 'hurt':
      return hurtGiven(draft, event);
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
