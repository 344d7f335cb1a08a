/** The clinic's settings as an administrator uses them, by keyboard; and two who change them at the same time. */
import { type Browser, expect, type Page, test } from '@playwright/test';
import { desk, expectAccessible, phone, press, signedIn, watched } from '../support.ts';

const administratorAt = async (browser: Browser, baseURL: string, viewport = desk): Promise<Page> => {
  const context = await browser.newContext({ viewport, baseURL });
  await signedIn(context, baseURL, 'admin');
  return context.newPage();
};

/** The row of a setting, by its title. */
const rowOf = (page: Page, title: string) =>
  page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: title, exact: true }) });

test('a setting is found in German, changed by keyboard, shown what it would have changed, and only then saved', async ({
  browser,
  baseURL,
}) => {
  const page = await administratorAt(browser, baseURL!);
  const troubles = watched(page);
  await page.goto('/administration/settings');
  await page.getByLabel('Search the settings').fill('Ausgangswert Tage');
  const row = rowOf(page, 'Days after which a baseline is due for review');
  await expect(row).toBeVisible();
  await row.getByRole('button', { name: /^Change/ }).focus();
  await page.keyboard.press('Enter');
  // The field has the focus; what stands in it is replaced.
  await page.keyboard.press('Control+A');
  await page.keyboard.type('400');
  await page.keyboard.press('Enter');
  await expect(row.getByRole('alert').first()).toContainText('is at most 84');
  await expect(row.getByRole('button', { name: /^Save/ })).toHaveCount(0);
  await expectAccessible(page, 'a setting out of bounds');
  await row.getByLabel(/New value/).fill('35');
  await page.keyboard.press('Enter');
  await expect(row).toContainText(
    /Looked at: [0-9,]+ days of joints since .* does not say what would have happened/,
  );
  await expectAccessible(page, 'a setting with what it would have changed');
  await row.getByLabel('Reason for the change').fill('Reviewed in five weeks here');
  await page.keyboard.press('Enter');
  await expect(row.getByRole('status')).toContainText('Saved: 35 days');
  await expect(row.getByRole('button', { name: /^Change/ })).toBeFocused();
  await row.getByText('Changed once').click();
  await expect(row).toContainText('42 days to 35 days, Imelda Coyrath');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a switch says on or off in words, is pressed by keyboard, and changes nothing until it is saved', async ({
  browser,
  baseURL,
}) => {
  const page = await administratorAt(browser, baseURL!, phone);
  const troubles = watched(page);
  await page.goto('/administration/settings?group=steps-up');
  const title = 'Steps in repetitions inside the signed band act at once';
  const toggle = page.getByRole('switch', { name: title });
  await expect(toggle).toBeChecked();
  await expect(toggle).toHaveText('On');
  await toggle.focus();
  await page.keyboard.press('Space');
  await expect(toggle).not.toBeChecked();
  await expect(toggle).toHaveText('Off');
  await expectAccessible(page, 'a switch that is being changed');
  await page.goto('/administration/settings?group=steps-up');
  await expect(page.getByRole('switch', { name: title })).toBeChecked();
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('two administrators change two settings at the same time and both are kept; of one the second is told', async ({
  browser,
  baseURL,
}) => {
  const address = '/administration/settings?group=people';
  const [one, other] = [
    await administratorAt(browser, baseURL!),
    await administratorAt(browser, baseURL!),
  ] as const;
  await one.goto(address);
  await other.goto(address);
  const change = async (page: Page, title: string, value: string) => {
    const row = rowOf(page, title);
    await row.getByRole('button', { name: /^Change/ }).click();
    await row.getByLabel(/New value/).fill(value);
    await row.getByLabel('Reason for the change').fill('Local rule');
    await row.getByRole('button', { name: /^Save/ }).click();
    return row;
  };
  const invitation = 'Days for which an invitation to a patient may be used';
  const emergency = 'Hours for which a record opened with a reason stays open';
  await expect((await change(one, invitation, '5')).getByRole('status')).toContainText('Saved: 5 days');
  await expect((await change(other, emergency, '2')).getByRole('status')).toContainText('Saved: 2 hours');
  await one.reload();
  await expect(rowOf(one, invitation)).toContainText('5 days');
  await expect(rowOf(one, emergency)).toContainText('2 hours');
  await expect((await change(one, emergency, '3')).getByRole('status')).toContainText('Saved: 3 hours');
  const told = await change(other, emergency, '6');
  await expect(told.getByRole('alert').first()).toContainText('Imelda Coyrath has changed');
  // What was typed stays, beside what is in force now.
  await expect(told.getByLabel(/New value/)).toHaveValue('6');
  await expect(told).toContainText('now 3 hours');
  await one.context().close();
  await other.context().close();
});

test('what is typed for one setting stays while another group is looked at', async ({ browser, baseURL }) => {
  const page = await administratorAt(browser, baseURL!);
  await page.goto('/administration/settings?group=people');
  const row = rowOf(page, 'Years for which the list of who opened a record is shown');
  await row.getByRole('button', { name: /^Change/ }).click();
  await row.getByLabel(/New value/).fill('12');
  await page
    .getByRole('navigation', { name: 'Groups' })
    .getByRole('link', { name: /Nutrition/ })
    .click();
  await expect(page.getByRole('heading', { name: 'Nutrition', level: 2 })).toBeVisible();
  await page.getByRole('navigation', { name: 'Groups' }).getByRole('link', { name: /Staff/ }).click();
  await expect(row.getByLabel(/New value/)).toHaveValue('12');
  await page.context().close();
});

test('the urgent number and the monitoring hours are entered where they are missed, each by itself', async ({
  browser,
  baseURL,
}) => {
  const page = await administratorAt(browser, baseURL!);
  const troubles = watched(page);
  await page.goto('/administration');
  const list = page.getByRole('region', { name: 'Before the first patient' });
  await expect(list).toContainText('2 of 5 are open');
  await list.getByRole('link', { name: 'Name somebody' }).click();
  await expect(page).toHaveURL(/#covering$/);
  await press(page, /^Change.*Urgent number$/);
  await page.getByLabel('Urgent number').fill('nobody');
  await press(page, 'Save urgent number');
  await expect(page.getByRole('alert').first()).toContainText('such as 116 117');
  await expectAccessible(page, 'an urgent number that is none');
  await page.getByLabel('Urgent number').fill('020 913 0167');
  await press(page, 'Save urgent number');
  await expect(page.getByText(/^020 913 0167/)).toBeVisible();
  await page.getByText('Change the hours').click();
  await page.getByLabel('Monday').fill('8-12, 11-14');
  await page.getByLabel('Saturday').fill('25');
  await press(page, 'Save these hours');
  await expect(page.getByRole('alert').first()).toContainText('Monday: two of these hours overlap');
  await expect(page.getByRole('alert').first()).toContainText('Saturday: write hours such as');
  await page.getByLabel('Monday').fill('8-12, 13-18:30');
  await page.getByLabel('Saturday').fill('');
  await expect(page.getByText(/^Patients will read: Monday, 8:00 to 12:00/)).toBeVisible();
  await expectAccessible(page, 'the hours of each day');
  await press(page, 'Save these hours');
  await expect(page.getByText(/^Patients read: Monday, 8:00 to 12:00/)).toBeVisible();
  expect(troubles).toEqual([]);
  await page.context().close();
});
