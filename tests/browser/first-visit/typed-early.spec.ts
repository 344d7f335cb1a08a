/** What is typed into a step of the first visit before its scripts have come. */
import { expect, type Page, test } from '@playwright/test';
import { deskOf, emptyPatient } from './first-visit-walk.ts';

test.use({ actionTimeout: 10_000 });

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
  const scriptsCome = await beforeScripts(page, `${record}/care/first-visit?step=reason`);
  await page.getByLabel('Diagnosis').fill('Hand osteoarthritis, left');
  await arthritis(page, 'No').check();
  await page.getByLabel('Joint to follow every day').selectOption({ label: 'Left hand' });
  scriptsCome();
  await expect(page.getByText(/^Draft saved/)).toBeVisible();
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
  const scriptsCome = await beforeScripts(page, `${record}/care/first-visit?step=reason`);
  await arthritis(page, 'No').check();
  scriptsCome();
  await page.waitForFunction(() => (window as unknown as { held: unknown[] }).held.length > 0);
  await arthritis(page, 'Yes').check();
  await page.evaluate(() => (window as unknown as { letGo: () => void }).letGo());
  await expect(arthritis(page, 'Yes')).toBeChecked();
  await expect(page.getByText(/^Draft saved/)).toBeVisible();
  await page.reload();
  await expect(arthritis(page, 'Yes')).toBeChecked();
});
