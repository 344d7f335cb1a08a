/** The running product on a test's own store, and a browser with cookies that asks its routes. */
import { readEnvironment } from '#commands/environment.mjs';
import type { Store } from '#data/database/store.ts';
import { clinicalClock } from '#server/clock.ts';
import type { Runtime } from '#server/runtime.ts';
import { makeAuth, type NewAccount, openAccount } from '#server/sign-in/auth.ts';
import { makeTelemetry, type Telemetry } from '#server/telemetry/telemetry.ts';
import { auditKey, start } from './clinic.ts';

export const testOrigin = 'http://127.0.0.1:3000';
export const testPassphrase = 'four words on a slip';

/** Every line logged since the last `testRuntime`. */
export const logLines: string[] = [];

/** Also what `runtime()` answers from now on, so that routes can be called as they are. */
export const testRuntime = (store: Store, env: Record<string, string> = {}): Runtime => {
  const settings = readEnvironment({ DATABASE_FILE: store.file, PUBLIC_ORIGIN: testOrigin, ...env });
  const clock = clinicalClock(start);
  const signIn = 's'.repeat(64);
  const context = () => ({ store, auditKey, now: clock.now() });
  const auth = makeAuth(store, { secret: signIn, origin: settings.PUBLIC_ORIGIN, context });
  const at: Runtime = {
    settings,
    store,
    keys: {
      audit: auditKey,
      auditKeys: [auditKey],
      signIn,
      phoneEntries: Buffer.alloc(32, 9),
      earlierPhoneEntries: [],
    },
    clock,
    auth,
  };
  const held = globalThis as { loadgateRuntime?: Runtime; loadgateTelemetry?: Telemetry };
  held.loadgateRuntime = at;
  logLines.length = 0;
  held.loadgateTelemetry = makeTelemetry({ write: (line) => logLines.push(line) });
  return at;
};

export const account = (at: Runtime, over: Partial<NewAccount> & Pick<NewAccount, 'email'>) =>
  openAccount(at.auth, {
    name: 'Test Clinician',
    clinicId: 'a',
    role: 'clinician',
    patientId: null,
    password: testPassphrase,
    ...over,
  });

type Route = (request: Request) => Response | Promise<Response>;

interface Answer {
  readonly status: number;
  readonly json: Record<string, unknown>;
  readonly headers: Headers;
}

export interface Browser {
  readonly cookies: Map<string, string>;
  readonly headers: () => Headers;
  readonly post: (route: Route, path: string, body: unknown, headers?: HeadersInit) => Promise<Answer>;
}

const keepCookies = (cookies: Map<string, string>, headers: Headers): void => {
  for (const line of headers.getSetCookie()) {
    const [pair = ''] = line.split(';');
    const at = pair.indexOf('=');
    const isOver = /max-age=0/i.test(line) || pair.slice(at + 1) === '';
    if (isOver) cookies.delete(pair.slice(0, at));
    else cookies.set(pair.slice(0, at), pair.slice(at + 1));
  }
};

/** From a network of its own, so that one test's tries never slow another's. */
export const browser = (network: string): Browser => {
  const cookies = new Map<string, string>();
  const headers = () =>
    new Headers({
      origin: testOrigin,
      host: '127.0.0.1:3000',
      'x-forwarded-for': network,
      cookie: [...cookies].map((pair) => pair.join('=')).join('; '),
    });
  return {
    cookies,
    headers,
    post: async (route, path, body, more = {}) => {
      const sent = headers();
      sent.set('content-type', 'application/json');
      for (const [name, value] of new Headers(more)) sent.set(name, value);
      const request = new Request(`${testOrigin}${path}`, {
        method: 'POST',
        headers: sent,
        body: JSON.stringify(body),
      });
      const response = await route(request);
      keepCookies(cookies, response.headers);
      const text = await response.text();
      return {
        status: response.status,
        json: text.startsWith('{') ? JSON.parse(text) : { text },
        headers: response.headers,
      };
    },
  };
};
