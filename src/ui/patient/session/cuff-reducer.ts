/** What happens with a cuff or wrap. null for an event that is not about it. */
import { withLine, withSet } from './change.ts';
import { type SessionDraft, setOf } from './draft.ts';
import type { SessionEvent } from './events.ts';
import { cuffOff, cuffOn } from './restriction.ts';

export const cuffReducer = (draft: SessionDraft, event: SessionEvent): SessionDraft | null => {
  switch (event.type) {
    case 'cuff-on':
      return withLine(draft, event.line, (line) => cuffOn(line, event.now));
    case 'cuff-down':
      return withLine(draft, event.line, (line) => cuffOff(line, event.now));
    case 'cuff-stop': {
      const line = draft.lines[event.line];
      if (!line) return draft;
      // Taken off before the last set was done: why is asked once it is off.
      const isEarly = event.set < line.dose.sets || setOf(line, event.set).finishedAt === null;
      const stopped = isEarly ? withSet(draft, event, { isStopped: true }) : draft;
      return {
        ...withLine(stopped, event.line, (one) => ({ ...one, leftAt: event.set })),
        step: `cuff-off:${event.line}`,
      };
    }
    case 'cuff-off': {
      const off = withLine(draft, event.line, (line) => cuffOff(line, event.now));
      // Off without ever having been on is nothing to sit down after.
      return off.lines[event.line]?.restrictions.length ? { ...off, step: `seated:${event.line}` } : off;
    }
    case 'limb':
      return withLine(draft, event.line, (line) => {
        const { sign, answer } = event;
        return event.isLater
          ? { ...line, signsLater: { ...line.signsLater, [sign]: answer } }
          : { ...line, signs: { ...line.signs, [sign]: answer }, limb: null };
      });
    case 'limb-again':
      return withLine(draft, event.line, (line) => ({ ...line, signsLater: line.signsLater ?? {} }));
    case 'limb-wait':
      return {
        ...withLine(draft, event.line, ({ signsLater: _, ...line }) => line),
        step: `limb-later:${event.line}`,
      };
    default:
      return null;
  }
};
