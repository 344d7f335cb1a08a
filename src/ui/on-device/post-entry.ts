/** The one way in which a device hands an entry on: as itself, and not for ever. */

/** A connection that says nothing for so long is given up: what comes behind it may be a warning sign. */
const patienceMs = 20_000;

export const postEntry = (
  post: typeof fetch,
  body: unknown,
  headers: Readonly<Record<string, string>> = {},
) =>
  post('/api/entries', {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    credentials: 'same-origin',
    // Older browsers wait as long as their own network does.
    signal: AbortSignal.timeout?.(patienceMs) ?? null,
    body: JSON.stringify(body),
  });
