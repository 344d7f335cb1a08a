/** Mutations come from our own pages only: the browser's own words about where a request comes from are checked. */
export const isOwnOrigin = (headers: Headers, origin: string): boolean => {
  const site = headers.get('sec-fetch-site');
  if (site !== null && site !== 'same-origin' && site !== 'none') return false;
  const from = headers.get('origin');
  return from === null ? site !== null : from === origin;
};

/** Reads a JSON body of at most `limit` bytes; null when it is longer or not JSON. */
export const jsonBody = async (request: Request, limit: number): Promise<{ value: unknown } | null> => {
  const declared = Number(request.headers.get('content-length') ?? '0');
  if (declared > limit || !request.body) return null;
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of request.body as unknown as AsyncIterable<Uint8Array>) {
    size += chunk.byteLength;
    if (size > limit) return null;
    chunks.push(chunk);
  }
  try {
    return { value: JSON.parse(Buffer.concat(chunks).toString('utf8')) };
  } catch {
    return null;
  }
};
