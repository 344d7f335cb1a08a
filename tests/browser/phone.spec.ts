/**
 * The patient's phone: without signal, in two windows, signed out in the middle.
 * At the end the file holds each entry exactly once.
 */
import path from 'node:path';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { openWithWorker, phoneOf, untilReady } from '#commands/team/phone-sequences/sequence.ts';
import { sessionsOf } from '#commands/team/phone-sequences/stored.ts';
import { answerAll, answerOne, headingOf } from '#commands/team/phone-sequences/walk.ts';
import { morningsOf } from './stored-answers.ts';
import { keptOn, press, signedIn, signIn, untilSaved } from './support.ts';

const file = path.join(process.env.BROWSER_TEST_FOLDER ?? '', 'clinic.sqlite');
const today = '2026-04-20';
const sessionsToday = (who: string) => sessionsOf(file, who).filter((entry) => entry.day === today);

const startSession = (page: Page) => press(page, /^Start the (easier )?session$/);

const savedNames = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const names = await caches.keys();
    const lists = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return lists.flat().map((request) => new URL(request.url).pathname);
  });

test('the worker names every file the page needs, and each of them is there', async ({ request }) => {
  const script = await (await request.get('/sw.js')).text();
  const assets = JSON.parse(/^const assets = (\[.*\]);$/m.exec(script)?.[1] ?? '[]') as string[];
  expect(assets.length).toBeGreaterThan(5);
  for (const asset of assets) expect([asset, (await request.get(asset)).status()]).toEqual([asset, 200]);
});

test('a whole session without signal, reloaded on every page, reaches the clinic once', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(240_000);
  const context = await phoneOf(browser, baseURL!, 'patient-1');
  const page = await openWithWorker(context);
  const before = sessionsOf(file, 'patient-1').length;
  await context.setOffline(true);
  await page.reload();
  await startSession(page);
  const seen = await answerAll(page, async (heading) => {
    await untilSaved(page);
    await page.reload();
    await expect(page.locator('main h1')).toContainText(heading.split(' ').slice(0, 2).join(' '));
  });
  expect(seen.length).toBeGreaterThan(15);
  await expect(page.getByText('saved on this phone')).toBeVisible();
  expect(sessionsOf(file, 'patient-1')).toHaveLength(before);
  await context.setOffline(false);
  await expect(page.getByText('Your clinic has your answers.')).toBeVisible({ timeout: 20_000 });
  expect(sessionsOf(file, 'patient-1')).toHaveLength(before + 1);
  // Kept on the phone: the person's own pages and hashed files; no answer of the server, no page of the clinic.
  const own = /^\/(?:today|history|handout|messages|_next\/static\/chunks\/.*)$/;
  const kept = await savedNames(page);
  expect([kept.includes('/today'), kept.filter((name) => !own.test(name))]).toEqual([true, []]);
  await context.close();
});

test('a warning sign without signal shows at once whom to call, and goes out before what waited longer', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-3');
  const page = await openWithWorker(context);
  await context.setOffline(true);
  await page.locator('.scores button[value="2"]').click();
  await answerAll(page);
  await press(page, 'Back to today');
  await startSession(page);
  await page.getByLabel('Pain or pressure in the chest').check();
  await press(page, 'I have this one. Go on');
  // Asked once more, with the advice and the number there already.
  await expect(page.getByRole('link', { name: /^Call 112/ })).toBeVisible();
  await press(page, 'Yes, I have this');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Stop. Call 112 now');
  await expect(page.getByRole('link', { name: /^Call 112/ })).toHaveAttribute('href', 'tel:112');
  await expect(page.getByText('has not reached the clinic yet')).toBeVisible();
  // Whom to call stands there at once; sealing and keeping the sign takes a moment more.
  await expect.poll(() => keptOn(page)).toContain('"isUrgent":true');
  const order: string[] = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/api/entries')) order.push(JSON.parse(request.postData() ?? '{}').kind);
  });
  await context.setOffline(false);
  await expect(page.getByText('This answer has reached your clinic.')).toBeVisible({ timeout: 20_000 });
  await expect.poll(() => order).toEqual(['session', 'morning']);
  const mornings = () => morningsOf(file, 'patient-3').filter((entry) => entry.day === today).length;
  await expect.poll(mornings).toBe(1);
  expect(sessionsToday('patient-3')).toHaveLength(1);
  await context.close();
});

test('two windows: one writes, the other may take over, and the session stands once', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-8');
  const first = await openWithWorker(context);
  await startSession(first);
  await answerOne(first);
  const second = await context.newPage();
  await second.goto('/today');
  await expect(second.getByText('open in another window')).toBeVisible();
  await press(second, 'Go on here');
  await press(second, 'Continue your session');
  await expect(first.getByText('open in another window')).toBeVisible();
  await answerAll(second);
  await expect(second.getByText('Your clinic has your answers.')).toBeVisible({ timeout: 20_000 });
  expect(sessionsToday('patient-8')).toHaveLength(1);
  await context.close();
});

const bodyOf = async (page: Page): Promise<{ body: string; owner: string }> => {
  const request = await page.waitForRequest('**/api/entries');
  return { body: request.postData() ?? '', owner: request.headers()['x-loadgate-patient'] ?? '' };
};

const post = (context: BrowserContext, baseURL: string, body: string, owner: string) =>
  context.request.post('/api/entries', {
    data: body,
    headers: { 'content-type': 'application/json', origin: baseURL, 'x-loadgate-patient': owner },
  });

test('signed out in the middle, a server in trouble, and sent twice: nothing is lost and nothing stands twice', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-9');
  const page = await openWithWorker(context);
  await startSession(page);
  await answerOne(page);
  await context.clearCookies();
  await answerAll(page);
  await press(page, 'Back to today');
  await expect(page.getByText('You are signed out.')).toBeVisible();
  // What waits on the phone is not readable there.
  const kept = await keptOn(page);
  expect(kept).toContain('"encrypted":{"version":1');
  expect(kept).not.toMatch(/painBefore|repetitions/);
  await signedIn(context, baseURL!, 'patient-9');
  let isInTrouble = true;
  await context.route('**/api/entries', (route) =>
    isInTrouble ? route.fulfill({ status: 500, body: '{}' }) : route.continue(),
  );
  const [{ body, owner }] = await Promise.all([bodyOf(page), page.goto('/today')]);
  for (const _ of [1, 2])
    await Promise.all([page.waitForResponse('**/api/entries'), press(page, 'Send now')]);
  expect(sessionsToday('patient-9')).toHaveLength(0);
  isInTrouble = false;
  await page.reload();
  await expect(page.getByText('Your clinic has today’s session')).toBeVisible({ timeout: 20_000 });
  const again = await post(context, baseURL!, body, owner);
  expect(await again.json()).toMatchObject({ stored: 'known' });
  expect(sessionsToday('patient-9')).toHaveLength(1);
  // On a shared phone: somebody else is signed in, and the entry is not taken as theirs.
  await signedIn(context, baseURL!, 'patient-5');
  expect((await post(context, baseURL!, body, owner)).status()).toBe(403);
  await context.close();
});

test('two people on one phone: the second finds nothing of the first, with or without signal, and the first finds everything again', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-5');
  const page = await openWithWorker(context);
  await startSession(page);
  await answerOne(page);
  const asked = await headingOf(page);
  // The sign-in of the first runs out; nobody signed out.
  await context.clearCookies();
  await signIn(page, 'patient-7');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Hello Anselm$/);
  await expect.poll(() => page.evaluate(async () => (await caches.match('/today')) !== undefined)).toBe(true);
  await context.setOffline(true);
  await page.goto('/today');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Hello Anselm$/);
  await untilReady(page);
  await expect(page.getByText('Continue your session')).toHaveCount(0);
  const savedPage = await page.evaluate(async () => (await caches.match('/today'))?.text());
  expect(savedPage).toContain('Anselm');
  expect(savedPage).not.toContain('Bartholomew');
  await context.setOffline(false);
  await context.clearCookies();
  await signIn(page, 'patient-5');
  await press(page, 'Continue your session');
  expect(await headingOf(page)).toBe(asked);
  await context.close();
});
