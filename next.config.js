/** Headers for answers that are not pages; pages get theirs, with a nonce, from src/proxy.ts. */
const fixedHeaders = [
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'X-Frame-Options', value: 'DENY' },
  { key: 'Referrer-Policy', value: 'no-referrer' },
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

/** @type {import('next').NextConfig} */
export default {
  poweredByHeader: false,
  reactStrictMode: true,
  serverExternalPackages: ['libsql'],
  // Types are a check of their own in `npm test`; a slip in a test must not keep the demo from building.
  typescript: { ignoreBuildErrors: true },
  outputFileTracingIncludes: { '/**': ['./drizzle/**'] },
  headers: async () => [
    { source: '/:path*', headers: fixedHeaders },
    ...['/api/:path*', '/healthz', '/readyz', '/metrics', '/demo/:path*'].map((source) => ({
      source,
      headers: dataHeaders,
    })),
  ],
};
