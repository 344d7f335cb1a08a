/** Headers for answers that are not pages; pages get theirs, with a nonce, from src/proxy.ts. */
export const fixedHeaders = [
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'X-Frame-Options', value: 'DENY' },
  // Nothing to another site. Under "no-referrer" a browser would leave our own origin out of a form it sends itself.
  { key: 'Referrer-Policy', value: 'same-origin' },
  { key: 'Permissions-Policy', value: 'camera=(), microphone=(), geolocation=(), interest-cohort=()' },
  { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
  { key: 'Cross-Origin-Resource-Policy', value: 'same-origin' },
  // Browsers heed it over TLS only, so it does no harm on this machine's own address.
  { key: 'Strict-Transport-Security', value: 'max-age=31536000' },
];

/** Answers that are data: nothing in them may ever run or be framed, whatever they hold. */
export const dataHeaders = [
  { key: 'Content-Security-Policy', value: "default-src 'none'; frame-ancestors 'none'" },
  { key: 'Cache-Control', value: 'no-store' },
];

/** Answers at an address that is itself a secret: it is told to nobody, and no search engine keeps it. */
export const feedHeaders = [
  ...dataHeaders.slice(0, 1),
  { key: 'Cache-Control', value: 'private, no-cache' },
  { key: 'Referrer-Policy', value: 'no-referrer' },
  { key: 'X-Robots-Tag', value: 'noindex, nofollow' },
];
