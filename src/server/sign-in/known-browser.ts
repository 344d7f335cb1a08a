/**
 * Browsers in which somebody has signed in before. Such a browser keeps its own count of wrong
 * tries for that account, so that wrong tries made elsewhere never make its owner wait.
 */
import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';

/** A desk shared by some colleagues remembers each of them. */
const most = 6;

const seal = (secret: string, mark: string, email: string): string =>
  createHmac('sha256', secret).update(`known browser ${mark} ${email.toLowerCase()}`).digest('base64url');

const parts = (cookie: string | null): readonly (readonly [string, string])[] =>
  (cookie ?? '').split('~').flatMap((entry) => {
    const [mark = '', appendAudit = ''] = entry.split('.');
    return mark && appendAudit ? [[mark, appendAudit] as const] : [];
  });

const isSame = (a: string, b: string): boolean => {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
};

/** The mark under which this browser is known to the account, or null. */
export const knownMark = (secret: string, cookie: string | null, email: string): string | null =>
  parts(cookie).find(([mark, appendAudit]) => isSame(appendAudit, seal(secret, mark, email)))?.[0] ?? null;

/** The cookie's value after a sign-in: this account first, older ones kept. */
export const withKnown = (secret: string, cookie: string | null, email: string): string => {
  const mark = randomBytes(12).toString('base64url');
  const others = parts(cookie).filter(
    ([known, appendAudit]) => !isSame(appendAudit, seal(secret, known, email)),
  );
  return [[mark, seal(secret, mark, email)] as const, ...others]
    .slice(0, most)
    .map((entry) => entry.join('.'))
    .join('~');
};
