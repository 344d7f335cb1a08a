/**
 * Walks through danger, each as the people of it would do it, on a server and a clock of their own: a warning
 * sign on a Saturday evening, a telephone call on a Monday, a surgeon's letter that lowers a ceiling.
 */
import { type Browser, type BrowserContext, expect, type Page, test } from '@playwright/test';
import { type OwnServer, ownServer } from '#commands/team/phone-sequences/own-server.ts';
import { newPhone, untilReady } from '#commands/team/phone-sequences/sequence.ts';
import { answerOne, headingOf } from '#commands/team/phone-sequences/walk.ts';
import { desk, expectAccessible, moveClock, press, signedIn, signIn, tickAll, watched } from './support.ts';

test.use({ actionTimeout: 15_000 });
test.describe.configure({ mode: 'serial' });
test.setTimeout(360_000);

let server: OwnServer;
test.beforeAll(async () => {
  server = await ownServer();
  await server.start();
});
test.afterAll(() => server.remove());

const deskOf = async (browser: Browser): Promise<Page> => {
  const context = await browser.newContext({ viewport: desk, baseURL: server.address });
  await signedIn(context, server.address, 'clinician');
  return context.newPage();
};

const phoneOf = async (browser: Browser, who: string): Promise<readonly [BrowserContext, Page]> => {
  const context = await newPhone(browser, server.address);
  const page = await context.newPage();
  await signIn(page, who);
  await untilReady(page);
  return [context, page];
};

const todayOn = async (page: Page) => {
  await page.goto('/today');
  await untilReady(page);
};

const radio = (page: Page, group: string | RegExp, answer: string) =>
  page.getByRole('group', { name: group }).getByRole('radio', { name: answer, exact: true });
const start = (page: Page) => page.getByRole('button', { name: /^Start the (easier )?session$/ });

const contactReached = async (page: Page) => {
  await radio(page, 'Reached', 'The patient').check();
  await page.getByLabel('Found').fill('Calf soft and not swollen; sore since the garden on Friday.');
  await page.getByLabel('Advised').fill('Ring at once if it swells or feels hot.');
  await press(page, 'Record contact');
  await expect(page.getByText('No warning sign is open.')).toBeVisible();
};

const resumeAll = async (page: Page) => {
  const group = page.getByRole('group', { name: 'Exercises to resume' });
  await tickAll(group.getByRole('checkbox'));
  await page.getByLabel('Reason').first().fill('Examined on Monday.');
  await press(page, 'Resume');
  await expect(page.getByText('Nothing is paused.')).toBeVisible();
};

test('a warning sign on Saturday evening stays open until somebody has reached her, and the phone always says how it stands', async ({
  browser,
}) => {
  const office = await deskOf(browser);
  const troubles = watched(office);
  await moveClock(office.context(), '2026-04-25T18:00:00+01:00');
  const [phone, hers] = await phoneOf(browser, 'patient-1');
  // Too late in the day to change the plan; what is told is asked all the same.
  await press(hers, 'Tell us all the same');
  await hers.locator('.scores button[value="2"]').click();
  while (!/^Do you have any of these/.test(await headingOf(hers))) await answerOne(hers);
  await hers.getByLabel(/^One calf is newly swollen/).check();
  await press(hers, 'I have this one. Go on');
  await expectAccessible(hers, 'a sign asked about once more');
  await press(hers, 'No, that was a slip');
  await hers.getByLabel(/^One calf is newly swollen/).check();
  await press(hers, 'I have this one. Go on');
  await press(hers, 'Yes, I have this');
  await expect(hers.getByRole('heading', { level: 1 })).toHaveText('Stop. Ring your clinic today');
  await expect(hers.getByText('This answer has reached your clinic.')).toBeVisible();
  await todayOn(hers);
  await expect(hers.getByText(/^You told us of a warning sign\. Do no exercises/)).toBeVisible();
  await expect(hers.getByText(/If nobody answers, do not wait: ring/).first()).toBeVisible();
  await expect(start(hers)).toBeHidden();
  await expectAccessible(hers, 'today, a warning sign told');

  await moveClock(office.context(), '2026-04-27T09:00:00+01:00');
  await office.goto('/worklist');
  const row = office.locator('.worklist-row', { hasText: 'Maeve Tarrowby' });
  await expect(row).toContainText('Warning sign');
  await expect(row).toContainText('no contact recorded yet');
  await row.getByRole('link', { name: 'Maeve Tarrowby', exact: true }).click();
  await expectAccessible(office, 'warning signs, one open');
  await radio(office, 'Reached', 'Nobody').check();
  await press(office, 'Record contact');
  await expect(office.getByText(/Tried once, nobody reached/)).toBeVisible();
  await todayOn(hers);
  await expect(hers.getByText(/^We tried to reach you and could not\./)).toBeVisible();
  await expect(start(hers)).toBeHidden();

  await contactReached(office);
  await todayOn(hers);
  await expect(hers.getByText(/^Nuala Derravane has spoken with you\./)).toBeVisible();
  await expect(start(hers)).toBeHidden();
  await expectAccessible(office, 'warning signs, still paused');
  await resumeAll(office);
  await todayOn(hers);
  await expect(hers.getByText(/has spoken with you|warning sign\. Do no/)).toBeHidden();
  await expect(start(hers)).toBeVisible();
  expect(troubles).toEqual([]);
  await phone.close();
  await office.context().close();
});

test('a warning sign told by telephone on Monday is entered from the same list and stops the phone at once', async ({
  browser,
}) => {
  const office = await deskOf(browser);
  const [phone, his] = await phoneOf(browser, 'patient-2');
  await office.goto('/patients/flare-then-hold/warning-signs');
  await office.getByText('Report a warning sign told by telephone').click();
  await office.getByRole('checkbox', { name: /^Hot, swollen joint/ }).check();
  await press(office, 'Report warning sign');
  await expect(office.getByText(/Everything is paused\. A sign ends only when a contact/)).toBeVisible();
  await todayOn(his);
  await expect(his.getByText(/^Your exercises are paused\. Do none of them/)).toBeVisible();
  await expect(start(his)).toBeHidden();
  await office.goto('/patients/flare-then-hold/review');
  await expect(
    office.getByText('Everything is paused until a contact has reached the patient.'),
  ).toBeVisible();
  await expectAccessible(office, 'review, a warning sign open');
  await phone.close();
  await office.context().close();
});

test('a surgeon’s letter that lowers a ceiling reaches the phone at once and is listed until the dose is written anew', async ({
  browser,
}) => {
  const office = await deskOf(browser);
  const [phone, hers] = await phoneOf(browser, 'patient-1');
  const overTwo = hers.getByText(/with (?!2 kg)\d/);
  const openList = () => hers.getByText('Your exercises today').click();
  await openList();
  await expect(overTwo).toBeVisible();
  await office.goto('/patients/steady-progress/care');
  await office.getByText('Record a limit', { exact: true }).click();
  await office.locator('#limit-joint').selectOption('right-knee');
  await office.locator('#limit-kind').selectOption('load-limit');
  await office.getByLabel(/^Highest load/).fill('2');
  await office.locator('#limit-from').fill('2026-04-20');
  await office.locator('#limit-author').fill('Mr Castellane, knee surgeon');
  await press(office, 'Record the limit');
  await expect(office.getByText(/Castellane/).first()).toBeVisible();
  await todayOn(hers);
  await expect(hers.getByText(/There is a limit/)).toBeVisible();
  await openList();
  await expect(hers.getByText(/with 2 kg/)).toBeVisible();
  await expect(overTwo).toHaveCount(0);
  await office.goto('/worklist');
  await expect(office.locator('.worklist-row', { hasText: 'Maeve Tarrowby' })).toContainText(
    'Limit of 2 kg set by Mr Castellane',
  );
  await phone.close();
  await office.context().close();
});
