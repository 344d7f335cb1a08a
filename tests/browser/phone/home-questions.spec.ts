/** What the clinic asks now and then: asked by a clinician, answered without signal, and read by question and day. */
import { expect, type Page, test } from '@playwright/test';
import { openWithWorker, phoneOf } from '#commands/team/phone-sequences/sequence.ts';
import { expectAccessible, press, signIn, untilSaved } from '../support.ts';

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

/** Somebody whom no other walk tells of a warning sign: beside one nothing is asked. */
const askToday = async (desk: Page) => {
  await signIn(desk, 'clinician');
  await desk.goto('/patients/beyond-her-dumbbells/outcomes');
  await desk.getByText('Ask at home', { exact: true }).click();
  await desk.getByRole('radio', { name: 'Nights and getting about (3 questions)' }).check();
  await press(desk, 'Ask this from that day on');
  await expect(desk.getByText('Due since')).toBeVisible();
  await expectAccessible(desk, 'outcomes with questions asked at home');
};

test('questions asked at home are answered without signal, kept over a reload, sent once, and shown by question and day', async ({
  browser,
  baseURL,
}) => {
  const desk = await browser.newPage({ baseURL: baseURL! });
  await askToday(desk);
  const context = await phoneOf(browser, baseURL!, 'patient-8');
  const page = await openWithWorker(context);
  const line = page.getByText('Your clinic has 3 questions for you now.');
  await expect(line).toBeVisible();
  await expect(page.getByRole('button', { name: 'Answer now' })).toBeVisible();
  await context.setOffline(true);
  await press(page, 'Answer now', { exact: true });
  await expect(heading(page)).toHaveText('How well did you sleep in the last seven nights?');
  await expectAccessible(page, 'a question asked at home');
  await press(page, '7', { exact: true });
  await expect(heading(page)).toHaveText('Were you out of the house on most days?');
  await press(page, 'Yes', { exact: true });
  await expect(heading(page)).toHaveText('What would you like to manage next?');
  await page.goBack();
  await expect(page.getByRole('button', { name: /^Yes.*Your answer$/ })).toBeVisible();
  await press(page, 'No', { exact: true });
  await page.getByLabel('In your own words').fill('The hill behind the house');
  await untilSaved(page);
  await page.reload();
  await press(page, 'Answer now', { exact: true });
  await press(page, /^7.*Your answer$/);
  // Nothing is open any more: what was typed is there to be checked.
  await expect(heading(page)).toHaveText('Send this?');
  await expect(page.getByText('The hill behind the house')).toBeVisible();
  await expectAccessible(page, 'the check of questions asked at home');
  await press(page, 'Send to the clinic', { exact: true });
  await expect(heading(page)).toHaveText('Thank you');
  await press(page, 'Back to today', { exact: true });
  await expect(line).toHaveCount(0);
  await context.setOffline(false);
  await expect(page.getByText('All your answers have reached the clinic.')).toBeVisible();
  await page.reload();
  await expect(heading(page)).toContainText('Philippa');
  await expect(line).toHaveCount(0);
  await desk.reload();
  const row = desk.getByRole('row').filter({ hasText: 'The hill behind the house' });
  await expect(row).toHaveCount(1);
  await expect(row).toContainText('What would you like to manage next?');
  await context.close();
  await desk.close();
});
