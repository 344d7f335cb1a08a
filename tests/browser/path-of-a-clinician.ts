/** What a clinician does at the desk on the whole path, each step as on the page. */
import { createOTP } from '@better-auth/utils/otp';
import { expect, type Page } from '@playwright/test';
import { demoPassphrase, reviewerCodeSecret } from '#demo/clinic.ts';
import { expectAccessible, press, tickAll } from './support.ts';

export const reviewer = 'Piotr Zawilny';

const radio = (page: Page, group: string | RegExp, answer: string) =>
  page.getByRole('group', { name: group }).getByRole('radio', { name: answer, exact: true });

/** By the place in the bar, then by the page of it where it does not open on that page. */
const open = async (page: Page, place: string, section = place) => {
  const bar = page.getByRole('navigation', { name: /^Record of/ });
  await bar.getByRole('link', { name: place, exact: true }).click();
  await expect(bar.getByRole('link', { name: place, exact: true })).toHaveAttribute('aria-current', 'page');
  const pages = page.getByRole('navigation', { name: `Pages of ${place}` });
  await pages.getByRole('link', { name: section, exact: true }).click();
  await expect(pages.getByRole('link', { name: section, exact: true })).toHaveAttribute(
    'aria-current',
    'page',
  );
};

export const signInWithCode = async (page: Page) => {
  await page.goto('/sign-in');
  await expectAccessible(page, 'sign-in');
  await page.getByLabel(/e-?mail/i).fill('reviewer@demo.invalid');
  await page.getByLabel(/passphrase/i).fill(demoPassphrase);
  await press(page, /^sign in$/i);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/code/i);
  await expectAccessible(page, 'one-time code');
  await page.getByLabel(/code/i).fill(await createOTP(reviewerCodeSecret).totp());
  await press(page, /^sign in$/i);
  await page.waitForURL('**/worklist');
  await expectAccessible(page, 'worklist');
};

export const openRecord = async (page: Page) => {
  await page.getByRole('link', { name: 'Patients' }).click();
  await page.getByLabel('Find by name').fill('ashd');
  await expectAccessible(page, 'patients');
  await page.getByRole('link', { name: 'Ashdrummond, Solveig' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Solveig Ashdrummond');
  await expectAccessible(page, 'overview');
};

/** Everything asked: one yes that closes occlusion, one not known, which is not no, and the rest no. */
export const screen = async (page: Page) => {
  await open(page, 'Assessment', 'Screening');
  await expect(
    page.getByText('No screening is recorded. No method is available until there is one.'),
  ).toBeVisible();
  for (const item of await page.locator('.screening-item').all())
    await item.getByRole('radio', { name: 'No', exact: true }).check();
  await radio(page, /high blood pressure/, 'Yes').check();
  await radio(page, /vasculitis/, 'Not known').check();
  await expectAccessible(page, 'screening sheet');
  await press(page, 'Record this screening');
  await expect(page.getByText(/^Version 1 was recorded today/)).toBeVisible();
  // Before it the row said that an assessment is needed: only the new word shows that the answers were heard.
  await expect(page.getByRole('row', { name: /^Occlusion/ })).toContainText('Needs clearance');
};

/** Each kind of measurement: what is typed by label, what is chosen by group. */
const measurements: readonly {
  readonly title: string;
  readonly typed: readonly (readonly [string, string])[];
  readonly chosen?: readonly (readonly [string, string])[];
}[] = [
  { title: 'Weight', typed: [['Weight', '71']] },
  { title: 'Height', typed: [['Height', '164']] },
  {
    title: 'Blood pressure',
    typed: [
      ['Systolic', '132'],
      ['Diastolic', '81'],
    ],
    chosen: [['Position', 'Seated']],
  },
  {
    title: 'Limb circumference',
    typed: [
      ['Where on the limb', 'a third of the way up the thigh'],
      ['Circumference', '52'],
    ],
    chosen: [
      ['Limb', 'Leg'],
      ['Side', 'Right'],
    ],
  },
  {
    title: 'Limb occlusion pressure',
    typed: [
      ['Cuff width', '11'],
      ['First reading', '184'],
      ['Second reading', '180'],
    ],
    chosen: [
      ['Limb', 'Leg'],
      ['Side', 'Right'],
      ['Position', 'Seated'],
      ['Method', 'Doppler'],
    ],
  },
  {
    title: 'Repetitions to failure at a load',
    typed: [
      ['Load', '8'],
      ['Repetitions', '10'],
    ],
    chosen: [['Side', 'Right']],
  },
];

export const measure = async (page: Page) => {
  await open(page, 'Assessment', 'Measurements');
  for (const { title, typed, chosen = [] } of measurements) {
    const form = page.locator('details', { has: page.getByText(title, { exact: true }) });
    await form.locator('summary').click();
    if (title.startsWith('Repetitions'))
      await form.getByLabel('Exercise').selectOption({ label: 'Straighten the knee, sitting' });
    for (const [label, text] of typed) await form.getByLabel(new RegExp(`^${label}`)).fill(text);
    for (const [group, answer] of chosen)
      await form
        .getByRole('group', { name: group })
        .getByRole('radio', { name: answer, exact: true })
        .check();
    await form.getByRole('button', { name: /^Record/ }).click();
    await expect(form.getByText('Recorded.')).toBeVisible();
  }
  await expectAccessible(page, 'measurements');
};

/** Prescribing shows which methods are open and why not; then a clinician clears, with a reason. */
export const readWhyContraindicated = async (page: Page) => {
  await open(page, 'Plan', 'Prescribe');
  const occlusion = page.locator('.method', { has: page.getByRole('link', { name: 'Occlusion' }) });
  await expect(occlusion).toContainText('Needs clearance');
  await expect(occlusion).toContainText('Diagnosed high blood pressure keeps occlusion closed');
  for (const name of ['Variation', 'Low load'])
    await expect(page.locator('.method', { has: page.getByRole('link', { name }) })).toContainText(
      'Eligible',
    );
  await expectAccessible(page, 'methods, one closed');
};

export const consentAndClear = async (page: Page) => {
  await open(page, 'Care', 'Consents, limits, events');
  await press(page, /^Read aloud; the patient consents.*with a clinician/);
  await expect(page.getByText('Given', { exact: true }).first()).toBeVisible();
  await expectAccessible(page, 'care');
  await open(page, 'Assessment', 'Screening');
  await page.getByText('Clear a finding, with a reason').click();
  await radio(page, 'Method', 'Occlusion').check();
  await tickAll(page.getByRole('group', { name: 'Findings to clear' }).getByRole('checkbox'));
  await radio(page, 'For', 'Every limb').check();
  await page
    .getByRole('textbox', { name: 'Reason' })
    .fill('Pressure in range for two years; Dr Ollerenshaw finds no vasculitis, by phone on 17 April.');
  await press(page, 'Clear, with precautions');
  await expect(page.getByRole('row', { name: /^Occlusion/ })).toContainText('Eligible with precautions');
  await expectAccessible(page, 'screening, cleared');
};
