/** What one request may cost: the calls in it are counted, bounded and run in turn. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { askedTooOften, sessionMinute } from '#server/http/rate.ts';
import { inTurnOf } from '#server/http/turns.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import {
  account,
  type Browser,
  browser,
  logLines,
  testOrigin,
  testPassphrase,
  testRuntime,
} from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST as signInPost } from '../../../src/app/api/auth/[...all]/route.ts';
import { GET as trpcGet } from '../../../src/app/api/trpc/[trpc]/route.ts';

describe('one request to the procedures', () => {
  let store: Store;
  let signedIn: Browser;
  beforeAll(async () => {
    store = freshStore();
    await clinicNamed(store, 'a');
    await account(testRuntime(store, { DEMO: '1' }), { email: 'c@test.invalid' });
    await signIn();
  });
  afterAll(() => store.close());

  const signIn = async () => {
    signedIn = browser('198.18.7.1');
    const sent = { email: 'c@test.invalid', password: testPassphrase };
    await signedIn.post(signInPost, '/api/auth/sign-in/email', sent);
  };

  const get = (path: string) =>
    trpcGet(new Request(`${testOrigin}/api/trpc/${path}`, { headers: signedIn.headers() }));
  const batch = (count: number, comma = ',') => get(`${Array(count).fill('account.me').join(comma)}?batch=1`);
  const callsLogged = () => logLines.filter((line) => line.includes('"event":"call"')).length;

  it.each([
    [3, 200],
    [4, 200],
    [5, 413],
    [650, 413],
  ])('of %i calls answers %i, however the commas between them are written', async (count, status) => {
    for (const comma of [',', '%2C', '%2c']) expect((await batch(count, comma)).status).toBe(status);
  });

  it('runs none of the calls of a batch that is too long', async () => {
    const before = callsLogged();
    await batch(5);
    await batch(650, '%2C');
    expect(callsLogged()).toBe(before);
    await batch(4, '%2C');
    expect(callsLogged()).toBe(before + 4);
  });

  it('is refused when its path cannot be read', async () => {
    expect((await get('account.me%2?batch=1')).status).toBe(400);
    expect((await get('account.me%252Caccount.me?batch=1')).status).toBe(404);
  });

  it('lets everybody else have a turn between two of its calls', async () => {
    const before = callsLogged();
    const seen = new Set<number>();
    let isOver = false;
    const look = () => {
      seen.add(callsLogged() - before);
      if (!isOver) setImmediate(look);
    };
    setImmediate(look);
    const answer = await batch(4);
    isOver = true;
    expect((await answer.json()).length).toBe(4);
    expect([...seen]).toEqual(expect.arrayContaining([1, 2, 3]));
  });

  it('counts each of its calls against the minute of the session, not itself as one', async () => {
    await signIn();
    const me = (await (await get('account.me')).json()) as { result: { data: { sessionId: string } } };
    const { sessionId } = me.result.data;
    await batch(4);
    await batch(3, '%2C');
    let left = 0;
    while (askedTooOften(sessionId, 'net') === 0) left += 1;
    expect(left).toBe(sessionMinute - 1 - 4 - 3);
    const refused = await batch(1);
    expect(refused.status).toBe(429);
    expect(Number(refused.headers.get('retry-after'))).toBeGreaterThan(0);
  });
});

describe('the minute of a session', () => {
  const spend = (sessionId: string, calls: number) => askedTooOften(sessionId, 'net', 0, calls);

  it.each([
    [596, 0],
    [597, 60],
  ])('with %i calls spent makes a batch of four wait %i seconds', (spent, wait) => {
    const sessionId = `spent ${spent}`;
    for (let calls = 0; calls < spent; calls += 1) spend(sessionId, 1);
    expect(spend(sessionId, 4)).toBe(wait);
    expect(spend(sessionId, 1)).toBe(wait === 0 ? 60 : 0);
  });
});

describe('the calls of one session', () => {
  const told: string[] = [];
  const call = (name: string, isGood: boolean) => async () => {
    told.push(`${name} begins`);
    await new Promise((resolve) => setImmediate(resolve));
    told.push(`${name} ends`);
    if (!isGood) throw new Error(name);
    return name;
  };

  it('run one after another in whichever requests they come, and never hold up another session', async () => {
    const asked = [
      inTurnOf('one')(call('first', true)),
      inTurnOf('one')(call('failing', false)),
      inTurnOf('one')(call('last', true)),
      inTurnOf('two')(call('other', true)),
    ];
    const ended = await Promise.allSettled(asked);
    expect(ended.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled', 'fulfilled']);
    const ofOne = told.filter((line) => !line.startsWith('other'));
    expect(ofOne).toEqual(['first', 'failing', 'last'].flatMap((name) => [`${name} begins`, `${name} ends`]));
    expect(told.indexOf('other begins')).toBeLessThan(told.indexOf('first ends'));
  });
});
