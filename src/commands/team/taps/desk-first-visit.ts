/** A whole first visit at the desk, from an added patient to a signed dose, its days and an invitation; one clean, one with findings. */
import type { Page } from 'playwright-core';
import { type Finding, storedVisit, visitDiffers } from './desk-first-visit-stored.ts';
import type { DeskPath, Hand } from './desk-path.ts';

const clean = 'desk-new';
const withFindings = 'desk-new-clot';

/** They close occlusion and leave low load. */
const findings: readonly Finding[] = [
  { item: 'past-clot', details: ['earlier-not-treated'] },
  { item: 'high-blood-pressure' },
  { item: 'diabetes', details: ['numbness'], limbs: ['left leg', 'right leg'] },
];

const goOn = async (page: Page, { press }: Hand, to: string) => {
  await press(page.locator('#go-on'));
  await page.waitForURL(new RegExp(`step=${to}`));
  await page.locator('#step-heading').waitFor();
};

const consents = async (page: Page, hand: Hand) => {
  for (const radio of await page.getByRole('radio', { name: 'Consents', exact: true }).all())
    await hand.press(radio);
  await goOn(page, hand, 'reason');
};

const reason = async (page: Page, hand: Hand) => {
  const { fill, choose, press } = hand;
  await fill(page.getByLabel('Diagnosis'), 'Knee osteoarthritis, right');
  await press(page.getByRole('group', { name: 'Inflammatory arthritis' }).getByLabel('No', { exact: true }));
  await choose(page.getByLabel('Joint to follow every day'), 'right-knee');
  await fill(page.getByLabel(/^Usual pain/), '3');
  await fill(page.getByLabel(/^Acceptable pain limit/), '5');
  await fill(page.getByLabel(/^Usual morning stiffness/), '10');
  await press(page.getByRole('group', { name: /^Usual swelling/ }).getByLabel('None', { exact: true }));
  await fill(page.getByLabel(/^What the patient wants/), 'Get up from the floor');
  await goOn(page, hand, 'screening');
};

const screening = async (page: Page, hand: Hand, answers: readonly Finding[]) => {
  const tick = (name: string, value: string) =>
    hand.press(page.locator(`input[name="${name}"][value="${value}"]`));
  for (const { item, details = [], limbs = [] } of answers) {
    await tick(item, 'yes');
    for (const detail of details) await tick(`${item}-details`, detail);
    for (const limb of limbs) await tick(`${item}-limbs`, limb);
  }
  await hand.press(page.getByRole('button', { name: 'All others: asked, answered no' }));
  // What the answers close is said before they are saved.
  if (answers.length > 0) {
    await page
      .getByText('possible once all is asked and measured: variation and low load.')
      .first()
      .waitFor();
    await page.getByText('Past or present clot: most lists stop occlusion work.').waitFor();
  }
  await goOn(page, hand, 'measurements');
};

const measured = async (page: Page, hand: Hand) => {
  await hand.fill(page.getByLabel(/^Resting blood pressure/), '128');
  await hand.fill(page.getByLabel(/^Lower/), '78');
  await goOn(page, hand, 'home');
  await hand.fill(page.getByLabel(/^Loads at home/), '1 2 3 4 5');
  await hand.press(page.getByRole('checkbox', { name: /^All of an ordinary household/ }));
  await hand.press(page.getByRole('checkbox', { name: 'Ankle weight' }));
  await goOn(page, hand, 'exercise');
};

const firstDose = async (page: Page, { press, fill, choose }: Hand) => {
  await press(page.getByRole('radio', { name: /^Low load/ }));
  await choose(page.getByLabel('Exercise', { exact: true }), 'knee-extension-seated right');
  await fill(page.getByLabel(/^Test: load/), '8');
  await fill(page.getByLabel(/^Test: repetitions/), '10');
  await press(page.getByRole('button', { name: 'Save and propose a dose' }));
  const proposal = page.getByRole('region', { name: 'Proposed dose' });
  await press(proposal.locator('#sign-proposal'));
  await proposal.getByText('Signed by', { exact: false }).waitFor();
  await press(proposal.getByRole('link', { name: 'On to the days of the week' }));
  await page.waitForURL(/step=week/);
};

const weekAndInvitation = async (page: Page, { press }: Hand) => {
  await press(page.getByRole('button', { name: 'Two days, everything' }));
  await press(page.getByRole('button', { name: 'Save the week' }));
  await page.waitForURL(/step=invitation/);
  await press(page.getByRole('button', { name: 'Make an invitation' }));
  await page.locator('.invitation-code').waitFor();
};

const walk = async (page: Page, hand: Hand, answers: readonly Finding[]) => {
  await hand.press(page.getByRole('link', { name: /^First visit:/ }));
  await page.waitForURL(/first-visit\?step=consents/);
  await consents(page, hand);
  await reason(page, hand);
  await screening(page, hand, answers);
  await measured(page, hand);
  await firstDose(page, hand);
  await weekAndInvitation(page, hand);
};

export const firstVisits: readonly DeskPath[] = [
  {
    path: 'first-visit-clean',
    from: `/patients/${clean}`,
    mostTaps: 22,
    mostFields: 14,
    mostPages: 3,
    walk: (page, hand) => walk(page, hand, []),
    differs: (file) => visitDiffers(storedVisit(file, clean), []),
  },
  {
    path: 'first-visit-contraindicated',
    from: `/patients/${withFindings}`,
    mostTaps: 36,
    mostFields: 14,
    mostPages: 3,
    walk: (page, hand) => walk(page, hand, findings),
    differs: (file) => visitDiffers(storedVisit(file, withFindings), findings),
  },
];

/** Added at the desk, and nothing else: who they are. */
export const newPeople = [clean, withFindings].map((id) => ({
  id,
  person: { givenName: 'Test', familyName: id, birthDay: '1961-06-01', phone: null },
}));
