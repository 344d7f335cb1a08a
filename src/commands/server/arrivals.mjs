/**
 * New connections are taken one in each turn of the event loop, as the library under Node does it. While entries are
 * saved a turn takes some tens of milliseconds, and of some hundred phones that connect at once the last waits half
 * a minute before anybody has read a word of it. So the next work begins only once nobody else is coming.
 */

/** However many keep coming, work begins again after so long. */
const longestHoldMs = 1000;

/**
 * @param {() => number} clock milliseconds that only go forward
 * @param {(look: () => void) => void} turn calls back in the next turn of the loop
 */
export const arrivals = (clock = () => performance.now(), turn = setImmediate) => {
  let count = 0;
  return {
    /** A connection was taken. */
    came: () => {
      count += 1;
    },
    /** Calls `go` after the first turn in which nobody came. @param {() => void} go */
    settled: (go) => {
      const until = clock() + longestHoldMs;
      // The turn in which this is asked has begun already, so it says nothing.
      let seen = -1;
      const look = () => {
        if (count === seen || clock() >= until) return go();
        seen = count;
        turn(look);
      };
      turn(look);
    },
  };
};
