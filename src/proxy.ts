/** Pages get a content security policy with a fresh nonce; everything else has fixed headers. */
import { type NextRequest, NextResponse } from 'next/server';

const policy = (nonce: string, isDevelopment: boolean) =>
  [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${isDevelopment ? " 'unsafe-eval'" : ''}`,
    `style-src 'self' 'nonce-${nonce}'`,
    // Chart containers and accessible widgets size themselves with style attributes.
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data:",
    "font-src 'self'",
    // The alarm at the end of a cuff's time is a sound file made in the page.
    "media-src 'self' blob:",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');

export const proxy = (request: NextRequest) => {
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64');
  const headers = new Headers(request.headers);
  const value = policy(nonce, process.env.NODE_ENV === 'development');
  headers.set('x-nonce', nonce);
  headers.set('content-security-policy', value);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set('Content-Security-Policy', value);
  response.headers.set('Cache-Control', 'no-store');
  return response;
};

export const config = {
  matcher: [
    // What has a file or a route of its own, to the letter: what only begins alike is a page that is not there.
    '/((?!api/|_next/static/|_next/image/|papers/|calendar/|(?:healthz|readyz|sw\\.js|demo/clock|icon\\.svg|apple-icon\\.png|manifest\\.webmanifest|icons/(?:192|512|maskable)/icon\\.png)$).*)',
  ],
};
