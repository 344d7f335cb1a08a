/** What is chosen and heard on the phone: size of the text, reading aloud, by ear, a cuff's alarm; and its icons. */

import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { openWithWorker, phoneOf } from '#commands/team/phone-sequences/sequence.ts';
import { answerOne, headingOf } from '#commands/team/phone-sequences/walk.ts';
import { cookieNames } from '#ui/patient/preferences/chosen.ts';
import { expectWithin } from './looks/looks.ts';
import { press } from './support.ts';

const openPreferences = async (page: Page) => {
  await page.getByText('More', { exact: true }).click();
  await page.getByText('Language, text size, weights').click();
};

test('the text is as large as chosen on the phone: at once, after a reload without signal before anything is shown, and nothing is wider than the window', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-7');
  const page = await openWithWorker(context);
  const rootSize = () => page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
  expect(await rootSize()).toBe('16px');
  await openPreferences(page);
  await page.getByLabel('Largest', { exact: true }).check();
  expect(await rootSize()).toBe('32px');
  await expectWithin(page, 'phone choices');
  await context.setOffline(true);
  // No frame is drawn before the styles of the head have come, so that the first one is the first paint.
  await page.addInitScript(() => {
    const look = () => {
      if (!document.querySelector('.frame-patient')) return void requestAnimationFrame(look);
      (window as { firstSize?: string }).firstSize = getComputedStyle(document.documentElement).fontSize;
    };
    requestAnimationFrame(look);
  });
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect.poll(() => page.evaluate(() => (window as { firstSize?: string }).firstSize)).toBe('32px');
  expect(await rootSize()).toBe('32px');
  await context.close();
});

/** A browser's own speech that keeps what it is told; the machine of the tests has no voice. */
const speechOf = (lang: string) => `
  window.heard = [];
  const voices = [{ lang: '${lang}', name: 'own', voiceURI: 'own', default: true, localService: true }];
  Object.defineProperty(window, 'speechSynthesis', { value: {
    getVoices: () => voices, addEventListener() {}, removeEventListener() {},
    speak(one) { window.heard.push(one.text); }, cancel() { window.heard.push('—'); },
  } });
  window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
`;

test('a page is read aloud where it was chosen, and leaving it stops the reading; without a voice it is not offered', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-5');
  await context.addInitScript(speechOf('en-IE'));
  const page = await openWithWorker(context);
  const heard = () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
  await expect(page.getByRole('button', { name: 'Read aloud' })).toHaveCount(0);
  await openPreferences(page);
  await page.getByLabel('Show the button').check();
  await expect(page.getByRole('button', { name: 'Read aloud' })).toBeVisible();
  await press(page, 'Start the session');
  const heading = await headingOf(page);
  await press(page, 'Read aloud');
  expect(await heard()).toContain(heading);
  await expect(page.getByRole('button', { name: 'Stop reading' })).toBeVisible();
  await page.goBack();
  await expect(page.getByRole('button', { name: 'Read aloud' })).toBeVisible();
  expect((await heard()).at(-1)).toBe('—');
  await context.close();
  const silent = await phoneOf(browser, baseURL!, 'patient-5');
  await silent.addInitScript(speechOf('de-DE'));
  const english = await openWithWorker(silent);
  await openPreferences(english);
  await expect(english.getByText('This phone has no voice of its own in English')).toBeVisible();
  await expect(english.getByLabel('Show the button')).toHaveCount(0);
  await silent.close();
});

test('by ear: a set is told, begun and counted, its one large button takes a third of the window, and the end of the time with a cuff is said', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-4');
  // Not sent: other tests begin the session of this day too.
  await context.route('**/api/entries', (route) => route.abort());
  await context.addInitScript(speechOf('en-IE'));
  await context.addCookies([{ name: cookieNames.byEar, value: 'yes', url: baseURL! }]);
  const page = await openWithWorker(context);
  const heard = () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
  await press(page, 'Start the session');
  while (!/Set 1 of/.test(await headingOf(page))) await answerOne(page);
  await expect.poll(heard).toContain('Set 1 of 4. 30 times. Get ready.');
  await expect.poll(heard, { timeout: 20_000 }).toContain('Start.');
  await expect.poll(heard, { timeout: 20_000 }).toContain('1');
  const { height } = (await page.getByRole('button', { name: /^As planned/ }).boundingBox())!;
  expect(height / page.viewportSize()!.height).toBeGreaterThan(0.32);
  await page.evaluate((passed) => {
    const [now, counted] = [Date.now.bind(Date), performance.now.bind(performance)];
    Date.now = () => now() + passed;
    performance.now = () => counted() + passed;
  }, 11 * 60_000);
  await expect.poll(heard).toContain('The time is up. Take it off now, even if you have not finished.');
  await expect(page.getByRole('button', { name: 'It is off' })).toBeVisible();
  await context.close();
});

/** Notes what is played; a phone that refuses takes nothing. */
const playing = (refuses: boolean) => `
  window.played = [];
  const play = HTMLMediaElement.prototype.play;
  HTMLMediaElement.prototype.play = function () {
    window.played.push(this);
    return ${refuses} ? Promise.reject(new DOMException('', 'NotAllowedError')) : play.call(this);
  };
`;

const atCuff = async (context: BrowserContext): Promise<Page> => {
  await context.route('**/api/entries', (route) => route.abort());
  const page = await openWithWorker(context);
  await press(page, 'Start the session');
  while (!/Put the cuff on/.test(await headingOf(page))) await answerOne(page);
  return page;
};

test('before a cuff goes on the page says whether the phone plays its alarm; a file as long as the time runs from the press that it is on until it is off', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-4');
  await context.addInitScript(playing(false));
  const page = await atCuff(context);
  await expect(page.getByText('When the time is up this phone plays an alarm')).toBeVisible();
  await press(page, 'It is on. Start the clock');
  const last = () =>
    page.evaluate(() => {
      const { paused, duration } = (window as unknown as { played: HTMLAudioElement[] }).played.at(-1)!;
      return { paused, seconds: Math.round(duration) };
    });
  // Ten minutes by its dose, and a minute of alarm.
  await expect.poll(last).toEqual({ paused: false, seconds: 660 });
  await press(page, 'Take it off now');
  await press(page, 'It is off');
  await expect.poll(last).toEqual({ paused: true, seconds: 660 });
  await context.close();
  const silent = await phoneOf(browser, baseURL!, 'patient-4');
  await silent.addInitScript(playing(true));
  const told = await atCuff(silent);
  await expect(told.getByText(/First set a kitchen timer to 10\s+minutes/)).toBeVisible();
  await expect(told.getByText('This phone can’t play an alarm.')).toBeVisible();
  await silent.close();
});

test('the icons that the manifest and the head name are there without a sign-in', async ({
  page,
  baseURL,
}) => {
  await page.goto('/sign-in');
  const address = (await page.locator('link[rel="manifest"]').getAttribute('href'))!;
  const manifest = await (await page.request.get(address)).json();
  const touch = (await page.locator('link[rel="apple-touch-icon"]').getAttribute('href'))!;
  const icons: string[] = [...manifest.icons.map(({ src }: { src: string }) => src), touch];
  expect(icons).toHaveLength(5);
  for (const icon of icons) {
    const answer = await page.request.get(new URL(icon, baseURL).href);
    expect([icon, answer.status()]).toEqual([icon, 200]);
    expect(answer.headers()['content-type']).toMatch(/^image\/(?:png|svg\+xml)/);
  }
});
