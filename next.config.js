/** Headers for answers that are not pages; pages get theirs, with a nonce, from src/proxy.ts. */
const fixedHeaders = [
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
const dataHeaders = [
  { key: 'Content-Security-Policy', value: "default-src 'none'; frame-ancestors 'none'" },
  { key: 'Cache-Control', value: 'no-store' },
];

/**
 * Addresses of earlier versions, now named otherwise. A printed invitation or a page kept on a phone may
 * still hold one. A browser keeps what stands after "#", which is where an invitation's code is.
 */
const earlierAddresses = [
  ['/join', '/enrol'],
  ['/how-it-went', '/history'],
  ['/write', '/messages'],
  ['/before-visit', '/pre-visit'],
  ['/before-visit/agreements', '/pre-visit/consents'],
  ['/who-opened', '/access-log'],
];

/** @type {import('next').NextConfig} */
export default {
  poweredByHeader: false,
  reactStrictMode: true,
  serverExternalPackages: ['libsql', '@myriaddreamin/typst-ts-node-compiler'],
  // Types are a check of their own in `npm test`; a slip in a test must not keep the demo from building.
  typescript: { ignoreBuildErrors: true },
  outputFileTracingIncludes: {
    '/**': ['./drizzle/**', './src/papers/templates/**', './node_modules/dejavu-fonts-ttf/ttf/**'],
  },
  redirects: async () =>
    earlierAddresses.map(([source, destination]) => ({ source, destination, permanent: true })),
  headers: async () => [
    { source: '/:path*', headers: fixedHeaders },
    ...['/api/:path*', '/healthz', '/readyz', '/metrics', '/demo/:path*', '/papers/:path*'].map((source) => ({
      source,
      headers: dataHeaders,
    })),
  ],
};
