/** Mutations come from our own pages only: the browser's own words about where a request comes from are checked. */
export const isOwnOrigin = (headers: Headers, origin: string): boolean => {
  const site = headers.get('sec-fetch-site');
  if (site !== null && site !== 'same-origin' && site !== 'none') return false;
  const from = headers.get('origin');
  return from === null ? site !== null : from === origin;
};

/** The body's bytes, at most `limit` of them; null when there are more. Counted as they come: a length can be made up. */
export const limitedBody = async (request: Request, limit: number): Promise<Buffer | null> => {
  if (Number(request.headers.get('content-length') ?? '0') > limit) return null;
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of (request.body ?? []) as unknown as AsyncIterable<Uint8Array>) {
    size += chunk.byteLength;
    if (size > limit) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
};

/** Reads a JSON body of at most `limit` bytes; null when it is longer or not JSON. */
export const jsonBody = async (request: Request, limit: number): Promise<{ value: unknown } | null> => {
  const bytes = await limitedBody(request, limit);
  if (!bytes) return null;
  try {
    return { value: JSON.parse(bytes.toString('utf8')) };
  } catch {
    return null;
  }
};

/** A page of another site asking; a browser says so itself. */
export const isCrossSite = (headers: Headers): boolean => headers.get('sec-fetch-site') === 'cross-site';
