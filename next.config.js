import { dataHeaders, feedHeaders, fixedHeaders } from './src/server/http/fixed-headers.mjs';

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
    '/**': [
      './drizzle/**',
      './src/papers/templates/**',
      './src/papers/typesetting/engine.mjs',
      './src/data/**',
      './src/core/**',
      './node_modules/dejavu-fonts-ttf/ttf/**',
    ],
  },
  redirects: async () =>
    earlierAddresses.map(([source, destination]) => ({ source, destination, permanent: true })),
  headers: async () => [
    { source: '/:path*', headers: fixedHeaders },
    ...['/api/:path*', '/healthz', '/readyz', '/demo/:path*', '/papers/:path*', '/exports/:path*'].map(
      (source) => ({
        source,
        headers: dataHeaders,
      }),
    ),
    { source: '/calendar/:path*', headers: feedHeaders },
  ],
};
