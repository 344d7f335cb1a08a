/** Ten minutes between appointments: from an empty patient to one signed low-load exercise, counted. */
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { type Hand, keyboardHand, pointingHand } from './input-means.ts';
import { desk, expectAccessible, fillBirthDay, signedIn, watched } from './support.ts';

// A control that is not there is said at once, not after the whole time of the test.
test.use({ actionTimeout: 10_000 });

const mostActions = 25;

/** A patient of whom nothing is recorded but who it is. */
const emptyPatient = async (page: Page, familyName: string): Promise<string> => {
  await page.goto('/patients/new');
  await page.getByLabel('Given name').fill('Ottoline');
  await page.getByLabel('Family name').fill(familyName);
  await fillBirthDay(page, '1957-11-02');
  await page.getByRole('button', { name: 'Add this patient' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(familyName);
  return page.url();
};

const visit = async (page: Page, hand: Hand) => {
  const radio = (group: string, answer: string) =>
    page.getByRole('group', { name: group, exact: true }).getByRole('radio', { name: answer, exact: true });
  await hand.press(
    page.getByRole('navigation', { name: /^Record of/ }).getByRole('link', { name: 'Assessment' }),
  );
  await hand.press(page.getByRole('link', { name: 'First visit' }));
  await hand.type(page.getByLabel('Diagnosis'), 'Knee osteoarthritis, right');
  await hand.choose(radio('Inflammatory arthritis', 'No'));
  await hand.pick(page.getByLabel('Joint to follow every day'), 'Right knee');
  await hand.type(page.getByLabel('Loads at home, kg'), '1 2 3 4 5');
  await hand.press(page.getByRole('button', { name: 'All others: asked, answered no' }));
  await hand.type(page.getByLabel('Resting blood pressure, upper'), '128');
  await hand.type(page.getByLabel('Lower'), '78');
  await hand.pick(page.getByLabel('Begin with'), 'Knee: front of the thigh, sitting');
  await hand.choose(radio('Side', 'Right'));
  await hand.type(page.getByLabel('Test: load'), '8');
  await hand.type(page.getByLabel('Test: repetitions'), '10');
};

const proposeAndSign = async (page: Page, hand: Hand) => {
  await hand.press(page.getByRole('button', { name: 'Save and propose' }));
  await expect(page.getByRole('heading', { name: 'Proposed; saved as a draft' })).toBeVisible();
  await hand.press(page.getByRole('button', { name: 'Sign as Nuala Derravane' }));
  await expect(page.getByText('The patient can see it now.')).toBeVisible();
};

const expectSigned = async (page: Page, record: string) => {
  await page.goto(`${record}/prescriptions`);
  await expect(page.getByText(/4 kg/).first()).toBeVisible();
  await expect(page.getByText(/signed by Nuala Derravane/).first()).toBeVisible();
  await page.goto(`${record}/screening`);
  // What was not asked keeps occlusion closed, and says so.
  await expect(page.getByRole('row', { name: /^Occlusion/ })).toContainText('Assessment needed');
};

const deskOf = async (context: BrowserContext, baseURL: string) => {
  await signedIn(context, baseURL, 'clinician');
  const page = await context.newPage();
  await page.setViewportSize(desk);
  return page;
};

test(`an empty patient has one signed low-load exercise after at most ${mostActions} actions`, async ({
  context,
  baseURL,
}) => {
  const page = await deskOf(context, baseURL!);
  const troubles = watched(page);
  const record = await emptyPatient(page, 'Fennimore');
  const hand = pointingHand();
  await visit(page, hand);
  await expectAccessible(page, 'first visit, filled in');
  await proposeAndSign(page, hand);
  console.log(`first visit by pointer: ${hand.actions()} actions of at most ${mostActions}`);
  expect(hand.actions()).toBeLessThanOrEqual(mostActions);
  await expectAccessible(page, 'first visit, signed');
  await expectSigned(page, record);
  expect(troubles).toEqual([]);
});

test('the same by keyboard alone, and what was typed comes back after the page is left', async ({
  context,
  baseURL,
}) => {
  const page = await deskOf(context, baseURL!);
  const record = await emptyPatient(page, 'Quellington');
  const hand = keyboardHand(page);
  await visit(page, hand);
  // Left before the moment in which a draft is kept by itself.
  await page.goto('/worklist');
  await page.goto(`${record}/care/first-visit`);
  await expect(page.getByLabel('Diagnosis')).toHaveValue('Knee osteoarthritis, right');
  await expect(page.getByText('Every question is answered.')).toBeVisible();
  await proposeAndSign(page, hand);
  console.log(
    `first visit by keyboard: ${hand.actions()} actions, ${hand.steps()} presses of Tab between them`,
  );
  expect(hand.actions()).toBeLessThanOrEqual(mostActions);
  await expectSigned(page, record);
});

/** The page as it stands before its scripts have come, and what lets them come. */
const beforeScripts = async (page: Page, address: string): Promise<() => void> => {
  let scriptsCome: () => void = () => undefined;
  const scripts = new Promise<void>((resolve) => {
    scriptsCome = resolve;
  });
  await page.route('**/_next/static/**/*.js', async (route) => {
    await scripts;
    await route.continue();
  });
  await page.goto(address, { waitUntil: 'commit' });
  return scriptsCome;
};

const arthritis = (page: Page, answer: string) =>
  page
    .getByRole('group', { name: 'Inflammatory arthritis' })
    .getByRole('radio', { name: answer, exact: true });

test('what is typed before the page’s scripts have come is known to the form', async ({
  context,
  baseURL,
}) => {
  const page = await deskOf(context, baseURL!);
  const record = await emptyPatient(page, 'Abernathy');
  const scriptsCome = await beforeScripts(page, `${record}/care/first-visit`);
  await page.getByLabel('Diagnosis').fill('Hand osteoarthritis, left');
  await arthritis(page, 'No').check();
  await page.getByLabel('Joint to follow every day').selectOption({ label: 'Left hand' });
  scriptsCome();
  await expect(page.getByText('Draft saved.')).toBeVisible();
  await page.reload();
  await expect(page.getByLabel('Diagnosis')).toHaveValue('Hand osteoarthritis, left');
  await expect(arthritis(page, 'No')).toBeChecked();
  await expect(page.getByLabel('Joint to follow every day').locator('option:checked')).toHaveText(
    'Left hand',
  );
});

test('an answer changed while the page wakes is not put back to the one before it', async ({
  context,
  baseURL,
}) => {
  const page = await deskOf(context, baseURL!);
  const record = await emptyPatient(page, 'Thistlewick');
  // The moment between waking and telling the form, held open until it is let go.
  await page.addInitScript(() => {
    const held: (() => void)[] = [];
    const plain = window.setTimeout;
    const letGo = () => {
      window.setTimeout = plain;
      for (const run of held) run();
    };
    const holding = (run: () => void, ms?: number) => (ms === undefined ? held.push(run) : plain(run, ms));
    Object.assign(window, { setTimeout: holding, held, letGo });
  });
  const scriptsCome = await beforeScripts(page, `${record}/care/first-visit`);
  await arthritis(page, 'No').check();
  scriptsCome();
  await page.waitForFunction(() => (window as unknown as { held: unknown[] }).held.length > 0);
  await arthritis(page, 'Yes').check();
  await page.evaluate(() => (window as unknown as { letGo: () => void }).letGo());
  await expect(arthritis(page, 'Yes')).toBeChecked();
  await expect(page.getByText('Draft saved.')).toBeVisible();
  await page.reload();
  await expect(arthritis(page, 'Yes')).toBeChecked();
});
