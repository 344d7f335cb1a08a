/**
 * The patient's page that a phone keeps for days without signal belongs to whoever was signed in. Somebody
 * who signs in drops it, so that nobody opens another person's; their own is kept as soon as it is shown.
 */
const forgetSavedPage = async (): Promise<void> => {
  if (!('caches' in window)) return;
  for (const name of await caches.keys()) await (await caches.open(name)).delete('/today');
};

/** To the first page of whoever has just signed in. */
export const goOnSignedIn = (): void => {
  void forgetSavedPage()
    // A browser that keeps nothing has nothing to forget.
    .catch(() => undefined)
    .then(() => window.location.assign('/'));
};
