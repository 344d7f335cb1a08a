/** From a method to a signature, three times: low load, a variation, occlusion with a cuff. */
import { expect, type Page } from '@playwright/test';
import { expectAccessible } from './support.ts';

const record = '/patients/first-visit';

interface Asked {
  readonly method: 'low-load' | 'variation' | 'occlusion';
  readonly picked: readonly (readonly [string, string])[];
  readonly chosen: readonly (readonly [string, string])[];
  readonly typed: readonly (readonly [string, string])[];
  /** What the proposal must say. */
  readonly says: readonly RegExp[];
}

/**
 * Low load: 8 kg ten times gives 9.79 kg by the published cubic of 2006 (factor 1.2236 at 10), 40 % of it is 3.92 kg, and
 * 4 kg is the owned load nearest to it. Occlusion: the lower of 184 and 180 mmHg, 60 %, is 108 mmHg.
 */
const requests: readonly Asked[] = [
  {
    method: 'low-load',
    picked: [['Exercise', 'Straighten the knee, sitting']],
    chosen: [['Side', 'Right']],
    typed: [],
    says: [/with 4 kg/, /1RM|maximum/],
  },
  {
    method: 'variation',
    picked: [['Exercise', 'Stand up from a chair, seat 46 cm']],
    chosen: [['Side', 'Both']],
    typed: [],
    says: [/Monitored joints: .*knee/],
  },
  {
    method: 'occlusion',
    picked: [
      ['Exercise', 'Straighten the knee, sitting'],
      ['Scheme', '30, then three times 15 (from memory)'],
    ],
    chosen: [
      ['Side', 'Right'],
      ['Cuff', 'Cuff with a gauge'],
      ['Position', 'Seated'],
      ['A clinician is present', 'Yes'],
      ['Patient was shown how to feel the pulse beyond the cuff', 'Yes'],
    ],
    typed: [
      ['Cuff width', '11'],
      ['Share of the occlusion pressure', '60'],
      ['Load', '2'],
      ['Seconds for one repetition', '4'],
      ['Rest between sets', '30'],
      ['Sessions a week', '2'],
    ],
    says: [/108 mmHg/, /under restriction|restricted/],
  },
];

const prescribe = async (page: Page, signer: string, asked: Asked) => {
  await page.goto(`${record}/prescribe?method=${asked.method}`);
  for (const [label, option] of asked.picked) {
    await page.getByLabel(label).selectOption({ label: option });
  }
  for (const [group, answer] of asked.chosen)
    await page.getByRole('group', { name: group }).getByRole('radio', { name: answer, exact: true }).check();
  for (const [label, text] of asked.typed) await page.getByLabel(new RegExp(`^${label}`)).fill(text);
  await page.getByRole('button', { name: 'Propose a dose' }).click();
  const proposal = page.getByRole('region', { name: 'Proposed dose' });
  await expect(proposal).toBeVisible();
  for (const words of asked.says) await expect(proposal).toContainText(words);
  await expect(proposal.getByText(/^\d+ cautions$/)).toBeVisible();
  await expect(proposal.locator('.cautions li').first()).toBeVisible();
  await expectAccessible(page, `proposal, ${asked.method}`);
  await proposal.getByRole('button', { name: 'Save draft' }).click();
  await proposal.getByRole('button', { name: `Sign as ${signer}` }).click();
  await expect(proposal.getByText(`Signed by ${signer}.`)).toBeVisible();
};

export const prescribeAll = async (page: Page, signer: string) => {
  for (const asked of requests) await prescribe(page, signer, asked);
};

/** Monday: all three. The cuff stays for days with a clinician beside the patient. */
export const giveWeekdays = async (page: Page) => {
  await page.goto(`${record}/programme`);
  for (const box of await page.getByRole('checkbox', { name: /, Monday$/ }).all()) await box.check();
  await page.getByRole('button', { name: 'Save the week' }).click();
  await expect(page.getByText(/Saved as version 1/)).toBeVisible();
  await expectAccessible(page, 'programme');
  await page.goto(`${record}/prescriptions`);
  await expect(page.getByText(/signed by Piotr Zawilny/)).toHaveCount(3);
  await expectAccessible(page, 'prescriptions');
};
