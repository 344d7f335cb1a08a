/** Files of the build, and the page of a sealed hour, which holds nobody's data in itself. */
const isNobodys = (path: string): boolean => path.startsWith('/_next/') || path === '/group-hour';

/**
 * The patient's pages that a phone keeps for days without signal belong to whoever was signed in. Somebody
 * who signs in drops them, so that nobody opens another person's; their own are kept as soon as they are shown.
 */
export const forgetSavedPages = async (): Promise<void> => {
  if (!('caches' in window)) return;
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const request of await cache.keys())
      if (!isNobodys(new URL(request.url).pathname)) await cache.delete(request);
  }
};

/** To the first page of whoever has just signed in. */
export const goOnSignedIn = (): void => {
  void forgetSavedPages()
    // A browser that keeps nothing has nothing to forget.
    .catch(() => undefined)
    .then(() => window.location.assign('/'));
};
