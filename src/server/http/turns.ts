/**
 * The calls of one session, run one after another in whichever requests they come: between two of them
 * everybody else has a turn, so that one session never holds the server longer than one call takes.
 */
import { setImmediate as turn } from 'node:timers/promises';

/** The end of each session's newest call; gone once nothing waits behind it. */
const ends = new Map<string, Promise<unknown>>();

export const inTurnOf =
  (session: string) =>
  <T>(call: () => Promise<T>): Promise<T> => {
    const ended = (ends.get(session) ?? Promise.resolve()).then(call);
    const end = ended
      .then(
        () => turn(),
        () => turn(),
      )
      .then(() => {
        if (ends.get(session) === end) ends.delete(session);
      });
    ends.set(session, end);
    return ended;
  };
