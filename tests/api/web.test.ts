import { NextRequest } from 'next/server';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { askedTooOften, sessionMinute, strangerMinute } from '#server/http/rate.ts';
import { telemetry } from '#server/telemetry/telemetry.ts';
import { allFiles, codeFiles, textOf } from '#tests/architecture/repository.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import {
  account,
  type Browser,
  browser,
  testOrigin,
  testPassphrase,
  testRuntime,
} from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import nextConfig from '../../next.config.js';
import { POST as signInPost } from '../../src/app/api/auth/[...all]/route.ts';
import { POST as entriesPost } from '../../src/app/api/entries/route.ts';
import { GET as trpcGet, POST as trpcPost } from '../../src/app/api/trpc/[trpc]/route.ts';
import { GET as healthzGet } from '../../src/app/healthz/route.ts';
import { GET as readyzGet } from '../../src/app/readyz/route.ts';
import { proxy, config as proxyConfig } from '../../src/proxy.ts';

/** "src/app/(clinician)/patients/[id]/page.tsx" → "/patients/x". */
const addressOf = (file: string): string =>
  `/${file
    .replace(/^src\/app\//, '')
    .replace(/(^|\/)(page\.tsx|route\.tsx?)$/, '')
    .split('/')
    .filter((part) => part !== '' && !/^\(.*\)$/.test(part))
    .map((part) => part.replace(/^\[.*\]$/, 'x'))
    .join('/')}`;

const pages = allFiles()
  .filter((file) => /^src\/app\/.*page\.tsx$/.test(file))
  .map(addressOf);
const routes = allFiles()
  .filter((file) => /^src\/app\/.*route\.tsx?$/.test(file))
  .map(addressOf);

const matches = (address: string): boolean =>
  proxyConfig.matcher.some((pattern) => new RegExp(`^${pattern}$`).test(address));

const policyOf = (address: string) => {
  const response = proxy(new NextRequest(`${testOrigin}${address}`));
  return {
    policy: response.headers.get('content-security-policy') ?? '',
    cache: response.headers.get('cache-control'),
  };
};

describe('headers of every page', () => {
  it('finds the pages and routes of the product', () => {
    expect(pages).toEqual(expect.arrayContaining(['/', '/worklist', '/patients/x', '/today', '/sign-in']));
    expect(routes).toEqual(expect.arrayContaining(['/api/trpc/x', '/api/entries', '/readyz']));
  });

  it.each(pages)('%s gets a policy that lets only scripts with its own nonce run', (address) => {
    expect(matches(address)).toBe(true);
    const { policy, cache } = policyOf(address);
    expect(cache).toBe('no-store');
    const directives = new Map(policy.split('; ').map((line) => [line.split(' ')[0], line] as const));
    const scripts = directives.get('script-src') ?? '';
    expect(scripts).toMatch(/'nonce-[A-Za-z0-9+/]{22}=='/);
    expect(scripts).not.toMatch(/unsafe|https?:|\*/);
    expect(directives.get('style-src')).not.toContain('unsafe');
    for (const line of [
      "object-src 'none'",
      "base-uri 'none'",
      "form-action 'self'",
      "frame-ancestors 'none'",
    ])
      expect(policy).toContain(line);
    expect(policyOf(address).policy).not.toBe(policy);
  });

  it.each([
    '/icon',
    '/icon-x',
    '/icons/x',
    '/manifest',
    '/apple-icon',
    '/healthz-x',
    '/papers',
    '/demo/clock/x',
  ])(
    '%s, which only begins like a file that is there, is a page that is not there and gets the policy',
    (address) => {
      expect(matches(address)).toBe(true);
    },
  );

  it.each([
    '/icon.svg',
    '/apple-icon.png',
    '/manifest.webmanifest',
    '/icons/192/icon.png',
    '/sw.js',
    '/papers/plan',
  ])('%s is no page and keeps its own headers', (address) => {
    expect(matches(address)).toBe(false);
  });

  it('every address gets the fixed headers; data may neither run nor be framed', async () => {
    const rules = (await nextConfig.headers?.()) ?? [];
    const of = (source: string) =>
      new Map(
        rules
          .filter((rule) => rule.source === source)
          .flatMap((rule) => rule.headers)
          .map(({ key, value }) => [key, value]),
      );
    expect(Object.fromEntries(of('/:path*'))).toMatchObject({
      'X-Content-Type-Options': 'nosniff',
      'X-Frame-Options': 'DENY',
      'Referrer-Policy': 'same-origin',
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'Strict-Transport-Security': 'max-age=31536000',
    });
    for (const source of ['/api/:path*', '/healthz', '/readyz'])
      expect(of(source).get('Content-Security-Policy')).toBe("default-src 'none'; frame-ancestors 'none'");
    expect(nextConfig.poweredByHeader).toBe(false);
  });
});

describe('what people typed', () => {
  it('is never set as markup and never run: no part of the code can do either', () => {
    const able =
      /dangerouslySetInnerHTML|\.(inner|outer)HTML\b|insertAdjacentHTML|document\.write|\beval\(|new Function\(/;
    expect(codeFiles('src').filter((file) => able.test(textOf(file)))).toEqual([]);
  });
});

describe('where a page sends somebody', () => {
  it('is always written in the code, never taken from the request', () => {
    const calls =
      /\b(?:redirect|location\.assign|location\.replace|permanentRedirect|router\.(?:push|replace))\(\s*([^)]*)/g;
    const found = codeFiles('src').flatMap((file) =>
      [...textOf(file).matchAll(calls)].map(([, target = '']) => ({ file, target: target.trim() })),
    );
    expect(found.length).toBeGreaterThan(3);
    const open = found.filter(
      ({ target }) => !/^(['"`]\/(?!\/)|person \? starts\[person\.role\] : )/.test(target),
    );
    expect(open).toEqual([]);
  });
});

describe('the doors of the product', () => {
  let store: Store;
  let signedIn: Browser;
  beforeAll(async () => {
    store = freshStore();
    await clinicNamed(store, 'a');
    await account(testRuntime(store, { DEMO: '1' }), { email: 'c@test.invalid' });
    signedIn = browser('198.18.0.1');
    const sent = { email: 'c@test.invalid', password: testPassphrase };
    await signedIn.post(signInPost, '/api/auth/sign-in/email', sent);
  });
  afterAll(() => store.close());

  const doors = [
    ['/api/trpc/account.endEverywhere', trpcPost],
    ['/api/entries', entriesPost],
  ] as const;

  it.each(doors)(
    '%s refuses a change from another origin, from another site, and without an origin',
    async (path, route) => {
      const from = (headers: HeadersInit) => signedIn.post(route, path, {}, headers);
      expect((await from({ origin: 'https://elsewhere.example' })).status).toBe(403);
      expect((await from({ origin: 'null' })).status).toBe(403);
      expect((await from({ 'sec-fetch-site': 'cross-site' })).status).toBe(403);
      expect((await from({ 'sec-fetch-site': 'same-site' })).status).toBe(403);
      const headers = signedIn.headers();
      headers.delete('origin');
      headers.set('content-type', 'application/json');
      const bare = new Request(`${testOrigin}${path}`, { method: 'POST', headers, body: '{}' });
      expect((await route(bare)).status).toBe(403);
    },
  );

  it('a change sent as plain text is refused, so is one asked for by GET', async () => {
    const plain = await signedIn.post(
      trpcPost,
      '/api/trpc/account.endEverywhere',
      {},
      { 'content-type': 'text/plain' },
    );
    expect(plain.status).toBe(415);
    const got = await trpcGet(
      new Request(`${testOrigin}/api/trpc/account.endEverywhere`, { headers: signedIn.headers() }),
    );
    expect(got.status).toBe(405);
    const me = await trpcGet(
      new Request(`${testOrigin}/api/trpc/account.me`, { headers: signedIn.headers() }),
    );
    expect(me.status).toBe(200);
  });

  it('a page of another site cannot even ask', async () => {
    const headers = signedIn.headers();
    headers.set('sec-fetch-site', 'cross-site');
    expect((await trpcGet(new Request(`${testOrigin}/api/trpc/account.me`, { headers }))).status).toBe(403);
  });

  it('a body that is too long is refused, also when its length was made up or left out', async () => {
    const long = { text: 'x'.repeat(257 * 1024) };
    expect((await signedIn.post(trpcPost, '/api/trpc/account.prove', long)).status).toBe(413);
    const made = await signedIn.post(trpcPost, '/api/trpc/account.prove', long, { 'content-length': '10' });
    expect(made.status).toBe(413);
    const entry = { kind: 'morning', entry: { remark: 'x'.repeat(65 * 1024) } };
    expect((await signedIn.post(entriesPost, '/api/entries', entry)).status).toBe(400);
  });

  it('one session may make 600 calls a minute and a network of strangers 300; the next minute begins anew', () => {
    const asked = (sessionId: string | null, count: number, now: number) =>
      Array.from({ length: count }, () => askedTooOften(sessionId, 'net', now)).filter((wait) => wait > 0)
        .length;
    expect([sessionMinute, strangerMinute]).toEqual([600, 300]);
    expect(asked('s1', 600, 0)).toBe(0);
    expect(askedTooOften('s1', 'net', 59_999)).toBe(1);
    expect(askedTooOften('s2', 'net', 59_999)).toBe(0);
    expect(askedTooOften('s1', 'net', 60_000)).toBe(0);
    expect(asked(null, 301, 0)).toBe(1);
  });

  it('every answer carries a request id of our own making', async () => {
    const answer = await signedIn.post(trpcPost, '/api/trpc/account.prove', {}, { 'x-request-id': 'theirs' });
    expect(answer.headers.get('x-request-id')).toMatch(/^[0-9a-f-]{36}$/);
  });

  it('health answers anybody, readiness says what is missing, and requests and calls are counted', async () => {
    expect(healthzGet().status).toBe(200);
    const text = telemetry().metrics.text();
    expect(text).toMatch(/^# TYPE loadgate_requests_total counter$/m);
    expect(text).toMatch(/^loadgate_requests_total\{route="auth",status="200"\} 1$/m);
    expect(text).toMatch(/^loadgate_call_seconds_bucket\{le="\+Inf"\} \d+$/m);
    store.writer.client.exec(
      'CREATE TABLE kept AS SELECT * FROM __drizzle_migrations; DELETE FROM __drizzle_migrations WHERE id = 1',
    );
    expect([(await readyzGet()).status, await (await readyzGet()).text()]).toEqual([
      503,
      'schema is behind\n',
    ]);
    store.writer.client.exec(
      'DELETE FROM __drizzle_migrations; INSERT INTO __drizzle_migrations SELECT * FROM kept; DROP TABLE kept',
    );
  });
});
