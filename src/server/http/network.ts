/** Which network a request comes from, as the server has found it (`src/commands/server/forwarded.mjs`). */
export const networkOf = (headers: Headers): string =>
  headers.get('x-forwarded-for')?.split(',').at(-1)?.trim() || 'unknown';

const loopback = /^(::ffff:)?127\.\d+\.\d+\.\d+$|^::1$/;
const localHost = /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/;

/** Asked from this machine and by its own name. */
export const isLocal = (headers: Headers): boolean => {
  const chain = headers.get('x-forwarded-for');
  return localHost.test(headers.get('host') ?? '') && (chain === null || loopback.test(chain));
};
