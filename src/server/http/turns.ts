/** The calls of one request, run one after another: between two of them everybody else has a turn. */
import { setImmediate as turn } from 'node:timers/promises';

export const oneByOne = () => {
  let last: Promise<unknown> = Promise.resolve();
  return <T>(call: () => Promise<T>): Promise<T> => {
    const ended = last.then(call);
    last = ended.then(
      () => turn(),
      () => turn(),
    );
    return ended;
  };
};
