/**
 * Entries of phones, let in so many at a time. When more come than can be saved within some seconds, the newest is
 * told when to come again instead of waiting for an answer its phone no longer expects; the phone has it and
 * sends it by itself. Nobody is sent away for ever: who comes again is let into places that newcomers do not get.
 */
import { createHash } from 'node:crypto';
import { dataHeaders, fixedHeaders } from '#server/http/fixed-headers.mjs';

/** As many as share one commit: more at once make each slower and none sooner. */
const mostAtOnce = 16;

/** How long the line may be: what is saved in so many seconds lately, but never under or over so many. */
const placesFor = {
  newcomers: { seconds: 1, least: 8, most: 64 },
  returning: { seconds: 2, least: 16, most: 128 },
};

/** Of those sent away so many are known again; a clinic has fewer phones. */
const mostRemembered = 2000;
/** Over so many of the newest it is seen how fast entries are saved. */
const seenLately = 32;
const leastSeconds = 2;
const mostSeconds = 30;

/**
 * How fast entries are saved lately.
 * @param {() => number} clock milliseconds that only go forward
 */
const paceBy = (clock) => {
  const ends = [];
  /** Entries a second; null before there are enough to say. */
  const perSecond = () =>
    ends.length < seenLately ? null : (ends.length * 1000) / Math.max(1, clock() - ends[0]);
  return {
    ended: () => {
      ends.push(clock());
      if (ends.length > seenLately) ends.shift();
    },
    placesIn: ({ seconds, least, most }) => {
      const pace = perSecond();
      return pace === null ? least : Math.min(most, Math.max(least, Math.ceil(pace * seconds)));
    },
    secondsFor: (count) => {
      const pace = perSecond();
      const seconds = pace === null ? leastSeconds : Math.ceil(count / pace);
      return Math.min(mostSeconds, Math.max(leastSeconds, seconds));
    },
  };
};

/** Who was sent away and has not been let in since. */
const rememberSome = () => {
  const known = new Set();
  return {
    has: (who) => known.has(who),
    forget: (who) => known.delete(who),
    add: (who) => {
      known.add(who);
      if (known.size > mostRemembered) known.delete(known.values().next().value);
    },
  };
};

/** Those who wait and those who are in. @param {(go: () => void) => void} settled @param {() => void} ended */
const inOrder = (settled, ended) => {
  /** @type {(() => void)[]} */
  const waiting = [];
  let atOnce = 0;
  let isSettling = false;
  const letIn = () => {
    isSettling = false;
    while (atOnce < mostAtOnce && waiting.length > 0) {
      atOnce += 1;
      waiting.shift()?.();
    }
  };
  const next = () => {
    if (isSettling || atOnce >= mostAtOnce || waiting.length === 0) return;
    isSettling = true;
    settled(letIn);
  };
  const leave = () => {
    atOnce -= 1;
    ended();
    next();
  };
  return {
    /** How many are over what may be at work: who is let in as soon as nobody else is coming stands in nobody's way. */
    over: () => waiting.length + atOnce - mostAtOnce,
    count: () => waiting.length + atOnce,
    add: (go) => {
      let isOver = false;
      waiting.push(() =>
        go(() => {
          if (!isOver) leave();
          isOver = true;
        }),
      );
      next();
    },
  };
};

/**
 * The line itself, without anything of a server.
 * @param {() => number} clock
 * @param {(go: () => void) => void} settled calls back once the next may be let in
 */
export const admission = (clock = () => performance.now(), settled = (go) => go()) => {
  const sentAway = rememberSome();
  const pace = paceBy(clock);
  const line = inOrder(settled, pace.ended);
  return {
    /**
     * Calls `go` when it is its turn, with what to call once it is over, and answers 0; or answers the seconds
     * after which to come again.
     * @param {string} who the same for the same phone
     * @param {(leave: () => void) => void} go
     */
    enter: (who, go) => {
      const places = pace.placesIn(sentAway.has(who) ? placesFor.returning : placesFor.newcomers);
      if (line.over() >= places) {
        sentAway.add(who);
        return pace.secondsFor(line.count());
      }
      sentAway.forget(who);
      line.add(go);
      return 0;
    },
  };
};

/** Whether this asks for the door of the phones' queues. @param {import('node:http').IncomingMessage} request */
const isEntry = ({ method, url = '' }) => method === 'POST' && url.split('?')[0] === '/api/entries';

/** By what it is signed in with, so that a phone is known again wherever it comes from. */
const whoSends = ({ headers }) =>
  createHash('sha256')
    .update(headers.cookie ?? headers['x-forwarded-for'] ?? '')
    .digest('base64url');

/** Calls `then` once all of the request is here, or as much as is held: one that trickles in takes no place. */
const onceHere = (request, then) => {
  const look = () => {
    if (!request.complete && request.readableLength < request.readableHighWaterMark) return;
    request.off('readable', look);
    // The stream lets go of this listener in the next turn; whoever reads it comes after.
    setImmediate(then);
  };
  request.on('readable', look);
};

const sendAway = (response, seconds) => {
  globalThis.loadgateTelemetry?.metrics.request('entries', 503, 0);
  response.statusCode = 503;
  for (const { key, value } of [...fixedHeaders, ...dataHeaders]) response.setHeader(key, value);
  response.setHeader('Content-Type', 'application/json');
  response.setHeader('Retry-After', String(seconds));
  const message = `Too many phones are sending at once. The entry is kept on this phone and sent again in ${seconds} seconds.`;
  response.end(JSON.stringify({ problem: 'busy', message }));
};

/**
 * In front of the pages: entries of phones take their turn, everything else goes on.
 * @param {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => void} pages
 * @param {(go: () => void) => void} settled
 */
export const inTurn = (pages, settled) => {
  const line = admission(undefined, settled);
  return (request, response) => {
    if (!isEntry(request)) return pages(request, response);
    onceHere(request, () => {
      if (response.destroyed) return;
      const seconds = line.enter(whoSends(request), (leave) => {
        response.once('close', leave);
        response.once('finish', leave);
        // The phone has gone while it waited: nothing of it was begun, and it comes again.
        if (response.destroyed) leave();
        else pages(request, response);
      });
      if (seconds > 0) sendAway(response, seconds);
    });
  };
};
