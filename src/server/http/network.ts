/**
 * Which network a request comes from. The proxy nearest to the server adds the last entry; what
 * stands before it was sent by the other side and may be made up.
 */
export const networkOf = (headers: Headers): string =>
  headers.get('x-forwarded-for')?.split(',').at(-1)?.trim() || 'unknown';

const loopback = /^(::ffff:)?127\.\d+\.\d+\.\d+$|^::1$/;
const localHost = /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/;

/** Asked from this machine and by its own name, not handed on by a proxy. */
export const isLocal = (headers: Headers): boolean => {
  const chain = headers.get('x-forwarded-for');
  return localHost.test(headers.get('host') ?? '') && (chain === null || loopback.test(chain));
};
