/** A first visit, step by step: from an empty patient to one signed low-load exercise, counted; left and gone on with. */
import { expect, test } from '@playwright/test';
import { keyboardHand, pointingHand } from '../input-means.ts';
import { expectAccessible, press, watched } from '../support.ts';
import {
  asked,
  consentsAndReason,
  deskOf,
  emptyPatient,
  expectSigned,
  looked,
  proposeAndSign,
} from './first-visit-walk.ts';

// A control that is not there is said at once, not after the whole time of the test.
test.use({ actionTimeout: 10_000 });

const mostActions = 25;

test(`an empty patient has one signed low-load exercise after at most ${mostActions} actions`, async ({
  context,
  baseURL,
}) => {
  const page = await deskOf(context, baseURL!);
  const troubles = watched(page);
  const record = await emptyPatient(page, 'Fennimore');
  const hand = pointingHand();
  looked.isOn = true;
  await consentsAndReason(page, hand);
  await asked(page, hand);
  await proposeAndSign(page, hand);
  looked.isOn = false;
  console.log(`first visit by pointer: ${hand.actions()} actions of at most ${mostActions}`);
  expect(hand.actions()).toBeLessThanOrEqual(mostActions);
  await page.getByRole('link', { name: 'On to the days of the week' }).click();
  await press(page, 'Three days, everything');
  await expectAccessible(page, 'first visit, days');
  await press(page, 'Save the week');
  await expect(page.getByRole('heading', { name: 'Invitation', exact: true })).toBeFocused();
  await press(page, 'Make an invitation');
  await expect(page.locator('.invitation-code')).toBeVisible();
  const steps = page.getByRole('navigation', { name: 'Steps of the first visit' });
  // Nobody has said what is usual in the knee, and the list says so.
  await expect(steps.getByText('Done')).toHaveCount(7);
  await expect(steps.getByText(/right knee without usual values/)).toBeVisible();
  await expectAccessible(page, 'first visit, invited');
  await expectSigned(page, record);
  expect(troubles).toEqual([]);
});

test('the same by keyboard alone, left in the middle, gone on with and put right afterwards', async ({
  context,
  baseURL,
}) => {
  const page = await deskOf(context, baseURL!);
  const record = await emptyPatient(page, 'Quellington');
  const hand = keyboardHand(page);
  await consentsAndReason(page, hand);
  // Left before the moment in which a draft is kept by itself.
  await page.goto('/worklist');
  await page.goto(`${record}/care/first-visit`);
  await expect(page.getByLabel('Diagnosis')).toHaveValue('Knee osteoarthritis, right');
  await asked(page, hand);
  await proposeAndSign(page, hand);
  console.log(
    `first visit by keyboard: ${hand.actions()} actions, ${hand.steps()} presses of Tab between them`,
  );
  expect(hand.actions()).toBeLessThanOrEqual(mostActions);
  await page.goto(`${record}/care/first-visit?step=reason`);
  await expect(page.getByLabel('Diagnosis')).toHaveValue('Knee osteoarthritis, right');
  await page.getByLabel('Diagnosis').fill('Knee osteoarthritis, both');
  await press(page, 'Save, on to: Screening');
  await expect(page.getByRole('radio', { name: 'No', exact: true }).first()).toBeChecked();
  await page.goto(`${record}/care/episode`);
  await expect(page.getByRole('heading', { name: /Knee osteoarthritis, both/ })).toBeVisible();
  await expectSigned(page, record);
});

test('a contraindicating answer says at once what is closed; the visit ends in why nothing can be prescribed yet', async ({
  context,
  baseURL,
}) => {
  const page = await deskOf(context, baseURL!);
  const record = await emptyPatient(page, 'Marchbanks');
  await page.goto(`${record}/care/first-visit?step=screening`);
  const means = page.getByRole('complementary', { name: 'What this means so far' });
  await press(page, 'All others: asked, answered no');
  await expect(means.getByText('Still possible: variation and low load.')).toBeVisible();
  await page.locator('input[name="new-chest-faint-or-breath"][value="yes"]').check();
  await expect(means.getByText('No method is possible now.')).toBeVisible();
  await press(page, 'Save, on to: Measurements');
  await press(page, 'Save, on to: At home');
  await press(page, 'Save, on to: First exercise');
  await expect(page.getByText('Nothing can be prescribed yet, because:')).toBeVisible();
  await expectAccessible(page, 'nothing can be prescribed yet');
  await page.goto(record);
  await expect(page.getByRole('link', { name: 'First visit: Consents' })).toBeVisible();
});
