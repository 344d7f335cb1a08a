/** Walks of correction at the desk: a slip of two hundred kilograms, a second record of one person, a first visit with an old clot. */
import { type Browser, expect, type Page, test } from '@playwright/test';
import { desk, expectAccessible, fillBirthDay, press, signedIn } from './support.ts';

test.use({ actionTimeout: 15_000 });

const deskOf = async (browser: Browser, baseURL: string): Promise<Page> => {
  const context = await browser.newContext({ viewport: desk, baseURL });
  await signedIn(context, baseURL, 'clinician');
  return context.newPage();
};

const radio = (page: Page, group: string | RegExp, answer: string) =>
  page.getByRole('group', { name: group }).getByRole('radio', { name: answer, exact: true });

test('two hundred and fifty kilograms typed for two and a half are asked about, and once saved can be struck out with a reason', async ({
  browser,
  baseURL,
}) => {
  const office = await deskOf(browser, baseURL!);
  await office.goto('/patients/kidney-lock/measurements?kind=repetitions-to-failure');
  const form = office.locator('details', {
    has: office.getByText('Repetitions to failure at a load', { exact: true }),
  });
  await form.getByLabel('Exercise').selectOption({ label: 'Straighten the knee, sitting' });
  await form.getByRole('group', { name: 'Side' }).getByRole('radio', { name: 'Right', exact: true }).check();
  await form.getByLabel(/^Load/).fill('250');
  await form.getByLabel(/^Repetitions/).fill('8');
  await form.getByRole('button', { name: /^Record/ }).click();
  await expect(form.getByRole('heading', { name: /250/ })).toBeVisible();
  await form.getByRole('button', { name: 'It is correct; save it' }).click();
  await expect(form.getByText('Recorded.')).toBeVisible();
  await office.goto('/patients/kidney-lock/measurements');
  await office.getByText('Measurements: correct an entry').click();
  const line = office.locator('li', { hasText: '250' }).first();
  await line.getByRole('button', { name: /^Entered in error/ }).click();
  await line.getByLabel('What was wrong').fill('2.5 kg was meant.');
  await line.getByRole('button', { name: 'Strike it out instead' }).click();
  await expect(line.getByLabel('What was wrong')).toHaveValue('2.5 kg was meant.');
  await line.getByRole('button', { name: 'Strike out the entry' }).click();
  await expect(office.getByText(/Struck out by Nuala Derravane: 2\.5 kg was meant\./)).toBeVisible();
  await expectAccessible(office, 'an entry struck out');
  await office.context().close();
});

test('the same person is asked about before a second record is made, and nothing is made until that is answered', async ({
  browser,
  baseURL,
}) => {
  const office = await deskOf(browser, baseURL!);
  await office.goto('/patients/new');
  await office.getByLabel('Given name').fill('Maeve');
  await office.getByLabel('Family name').fill('Tarowby');
  await fillBirthDay(office, '1958-08-14');
  await press(office, 'Add this patient');
  await expect(office.getByRole('heading', { name: 'Is this patient on record already?' })).toBeVisible();
  await expect(office.getByRole('link', { name: 'Maeve Tarrowby' })).toBeVisible();
  await expectAccessible(office, 'a possible duplicate');
  await office.goto('/patients?name=tarowby');
  await expect(office.getByRole('link', { name: /Tarowby/ })).toHaveCount(0);
  await office.context().close();
});

test('a first visit with an old clot and diagnosed high blood pressure saves all of it, and the cuff waits for clearance', async ({
  browser,
  baseURL,
}) => {
  const office = await deskOf(browser, baseURL!);
  await office.goto('/patients/new');
  await office.getByLabel('Given name').fill('Ottoline');
  await office.getByLabel('Family name').fill('Brackenreed');
  await fillBirthDay(office, '1957-11-02');
  await press(office, 'Add this patient');
  await office.getByRole('link', { name: 'First visit: Consents' }).click();
  await press(office, 'Save, on to: Why they come');
  await office.getByLabel('Diagnosis').fill('Knee osteoarthritis, right');
  await radio(office, /^Inflammatory arthritis/, 'No').check();
  await office.getByLabel('Joint to follow every day').selectOption({ label: 'Right knee' });
  await press(office, 'Save, on to: Screening');
  for (const question of [/high blood pressure/i])
    await office
      .getByRole('group', { name: question })
      .getByRole('radio', { name: 'Yes', exact: true })
      .check();
  await press(office, 'All others: asked, answered no');
  await press(office, 'Save, on to: Measurements');
  await office.getByLabel('Resting blood pressure, upper').fill('138');
  await office.getByLabel('Lower').fill('84');
  await press(office, 'Save, on to: At home');
  await office.getByLabel('Loads at home, kg').fill('1 2 3 4 5');
  await office.getByRole('checkbox', { name: 'Ankle weight' }).check();
  await office.getByRole('checkbox', { name: /^All of an ordinary household/ }).check();
  await press(office, 'Save, on to: First exercise');
  await office.getByRole('radio', { name: /^Low load/ }).check();
  await office
    .getByLabel('Exercise', { exact: true })
    .selectOption({ label: 'Seated knee extension, right' });
  await office.getByLabel('Test: load').fill('8');
  await office.getByLabel('Test: repetitions').fill('10');
  await press(office, 'Save and propose a dose');
  const proposal = office.getByRole('region', { name: 'Proposed dose' });
  await proposal.getByRole('button', { name: /as Nuala Derravane$/ }).click();
  await expect(proposal.getByText('Signed by Nuala Derravane.')).toBeVisible();
  const record = office.url().replace(/\/care.*$/, '');
  await office.goto(`${record}/screening`);
  await expect(office.getByRole('row', { name: /^Low load/ })).toContainText('Eligible');
  await expect(office.getByRole('row', { name: /^Occlusion/ })).not.toContainText('Eligible');
  await office.context().close();
});
