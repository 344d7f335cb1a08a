/** The care around a dose: every screen of it, and the papers at its end on the screen and in print. */
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { firstVisitSteps } from '#core/episode/first-visit/first-visit-steps.ts';
import { lookAtScreen } from './looks/looks.ts';
import { desk, expectAccessible, press, signedIn, watched } from './support.ts';

const patientId = 'kidney-lock';
const record = `/patients/${patientId}`;

/** One procedure, as the pages call it. */
const call = async (context: BrowserContext, baseURL: string, path: string, input: object) => {
  const answer = await context.request.post(`/api/trpc/${path}`, {
    data: input,
    headers: { origin: baseURL },
  });
  expect([path, answer.status()]).toEqual([path, 200]);
  return ((await answer.json()) as { result: { data: unknown } }).result.data;
};

/** An episode of care that was opened, and closed today. */
const closedEpisode = async (context: BrowserContext, baseURL: string): Promise<string> => {
  const on = '2026-04-20';
  const episode = {
    diagnoses: ['Hip osteoarthritis, right'],
    joints: ['right-hip'],
    followedJoints: ['right-hip'],
    goals: ['Walk to the harbour and back without the stick'],
    referrer: 'Dr Ollerenshaw',
    contacts: [{ role: 'Daughter', name: 'Petra', phone: null }],
  };
  const opened = { patientId, episode, reason: 'Referral read.' };
  const episodeId = String(await call(context, baseURL, 'clinician.episodes.open', opened));
  for (const to of ['active', 'discharged']) {
    const change = { episodeId, to, on, reason: 'Agreed at the visit.', breakKind: null, expectedBack: null };
    await call(context, baseURL, 'clinician.episodes.change', { patientId, change });
  }
  return episodeId;
};

const lookAt = async (page: Page, address: string) => {
  await page.goto(address);
  await expect(page.locator('h1')).toHaveCount(1);
  await lookAtScreen(page, address);
};

const steps = firstVisitSteps.map((step) => `/first-visit?step=${step}`);
const screens = ['', '/episode', ...steps, '/pre-visit', '/appointments'].map(
  (path) => `${record}/care${path}`,
);

test('every screen of the care around a dose has no accessibility violation and nothing wider than the window', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  const troubles = watched(page);
  for (const screen of [...screens, '/patients/red-flag/handover']) await lookAt(page, screen);
  await signedIn(context, baseURL!, 'admin');
  await lookAt(page, '/administration/care');
  expect(troubles).toEqual([]);
  await context.close();
});

test('the papers at the end of care: advice is read before it is printed, and print holds the paper alone', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ viewport: desk, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const asked = `?episode=${await closedEpisode(context, baseURL!)}`;
  const page = await context.newPage();
  const troubles = watched(page);
  for (const paper of ['letter', 'self-management']) await lookAt(page, `${record}/${paper}${asked}`);
  // The sheet is what stands on the page now.
  const print = page.getByRole('button', { name: 'Print' });
  await expect(print).toHaveAttribute('aria-disabled', 'true');
  await page.getByLabel('I have read this advice, and it fits this patient').check();
  await expect(print).not.toHaveAttribute('aria-disabled');
  await page.emulateMedia({ media: 'print', colorScheme: 'light' });
  await expect(page.getByRole('heading', { name: 'What to do on your own' })).toBeVisible();
  await expect(page.getByText('Advice of the clinic').first()).toBeVisible();
  await expect(page.getByText('Read and signed by the clinician')).toBeVisible();
  for (const hidden of [
    print,
    page.getByRole('navigation').first(),
    page.getByText('I have read this advice'),
  ])
    await expect(hidden).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await page.getByRole('link', { name: /in German/ }).click();
  await expect(page.getByRole('heading', { name: 'Was Sie selbst tun können' })).toBeVisible();
  await expect(page.locator('[lang="de"]').getByText('Rat der Praxis').first()).toBeVisible();
  expect(troubles).toEqual([]);
  await context.close();
});

test('an appointment at a distance is begun with two people present, and says what is locked', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ viewport: desk, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  await page.goto(`${record}/care/appointments`);
  await page.getByRole('radio', { name: 'Video' }).check();
  await page.getByLabel(/^Where the patient is now/).fill('Her sister’s kitchen, Tarrenport');
  await page.getByLabel(/^Number to ring/).fill('020 913 0157');
  await page.getByLabel(/^Who is with the patient/).fill('Petra, her daughter\nAn interpreter');
  await press(page, 'Begin');
  await expect(page.getByText('Your appointment today is by video')).toBeVisible();
  await expect(page.getByText(/^Locked until you meet in person: limb occlusion pressure/)).toBeVisible();
  await expect(page.getByRole('row', { name: /Video/ })).toContainText(
    'Petra, her daughter and An interpreter',
  );
  await expectAccessible(page, 'an appointment at a distance');
  await context.close();
});
