/**
 * One thing per open store, made on first use. It hangs on the store itself: the server's start and
 * its routes are bundled apart, each with modules of its own, and all must see the same one.
 */
import type { Store } from './store.ts';

export const perStore = <T, More extends unknown[]>(
  name: string,
  make: (store: Store, ...more: More) => T,
): ((store: Store, ...more: More) => T) => {
  const mark = Symbol.for(`loadgate.${name}`);
  return (store, ...more) => {
    const holder = store as Store & { [mark]?: T };
    holder[mark] ??= make(store, ...more);
    return holder[mark];
  };
};
