/** The steps of a first visit, walked by a hand that counts; what a walk begins with and ends in. */
import { type BrowserContext, expect, type Page } from '@playwright/test';
import type { Hand } from '../input-means.ts';
import { desk, expectAccessible, fillBirthDay, press, signedIn } from '../support.ts';

/** One of the walks looks at each step it comes by. */
export const looked = { isOn: false };
const expectAccessibleOnce = async (page: Page, name: string) => {
  if (looked.isOn) await expectAccessible(page, `first visit, ${name}`);
};

/** A patient of whom nothing is recorded but who it is. */
export const emptyPatient = async (page: Page, familyName: string): Promise<string> => {
  await page.goto('/patients/new');
  await page.getByLabel('Given name').fill('Ottoline');
  await page.getByLabel('Family name').fill(familyName);
  await fillBirthDay(page, '1957-11-02');
  await press(page, 'Add this patient');
  await expect(page.getByRole('heading', { level: 1 })).toContainText(familyName);
  return page.url();
};

const goOn = async (page: Page, hand: Hand, to: string) => {
  await hand.press(page.getByRole('button', { name: `Save, on to: ${to}` }));
  await expect(page.getByRole('heading', { name: to, exact: true })).toBeFocused();
};

const radioOf = (page: Page) => (group: string | RegExp, answer: string) =>
  page.getByRole('group', { name: group }).getByRole('radio', { name: answer, exact: true });

export const consentsAndReason = async (page: Page, hand: Hand) => {
  const radio = radioOf(page);
  await hand.press(page.getByRole('link', { name: 'First visit: Consents' }));
  for (const kind of ['Assessment and treatment', 'Keeping a record', /^Remote monitoring/])
    await hand.choose(radio(kind, 'Consents'));
  await expectAccessibleOnce(page, 'consents');
  await goOn(page, hand, 'Why they come');
  await hand.type(page.getByLabel('Diagnosis'), 'Knee osteoarthritis, right');
  await hand.choose(radio('Inflammatory arthritis', 'No'));
  await hand.pick(page.getByLabel('Joint to follow every day'), 'Right knee');
  await expectAccessibleOnce(page, 'why they come');
};

export const asked = async (page: Page, hand: Hand) => {
  await goOn(page, hand, 'Screening');
  await hand.press(page.getByRole('button', { name: 'All others: asked, answered no' }));
  await expectAccessibleOnce(page, 'screening, answered');
  await goOn(page, hand, 'Measurements');
  await hand.type(page.getByLabel('Resting blood pressure, upper'), '128');
  await hand.type(page.getByLabel('Lower'), '78');
  await expectAccessibleOnce(page, 'measurements');
  await goOn(page, hand, 'At home');
  await hand.type(page.getByLabel('Loads at home, kg'), '1 2 3 4 5');
  await hand.tick(page.getByRole('checkbox', { name: /^All of an ordinary household/ }));
  await hand.tick(page.getByRole('checkbox', { name: 'Ankle weight' }));
  await expectAccessibleOnce(page, 'at home');
  await goOn(page, hand, 'First exercise');
  await hand.choose(page.getByRole('radio', { name: /^Low load/ }));
  await hand.pick(page.getByLabel('Exercise', { exact: true }), 'Seated knee extension, right');
  await hand.type(page.getByLabel('Test: load'), '8');
  await hand.type(page.getByLabel('Test: repetitions'), '10');
};

export const proposeAndSign = async (page: Page, hand: Hand) => {
  await hand.press(page.getByRole('button', { name: 'Save and propose a dose' }));
  const proposal = page.getByRole('region', { name: 'Proposed dose' });
  await expectAccessibleOnce(page, 'proposed');
  await hand.press(proposal.getByRole('button', { name: /as Nuala Derravane$/ }));
  await expect(proposal.getByText('Signed by Nuala Derravane.')).toBeVisible();
};

export const expectSigned = async (page: Page, record: string) => {
  await page.goto(`${record}/prescriptions`);
  await expect(page.getByText(/4 kg/).first()).toBeVisible();
  await expect(page.getByText(/signed by Nuala Derravane/).first()).toBeVisible();
  await page.goto(`${record}/screening`);
  // What was not asked keeps occlusion closed, and says so.
  await expect(page.getByRole('row', { name: /^Occlusion/ })).toContainText('Assessment needed');
};

export const deskOf = async (context: BrowserContext, baseURL: string) => {
  await signedIn(context, baseURL, 'clinician');
  const page = await context.newPage();
  await page.setViewportSize(desk);
  return page;
};
