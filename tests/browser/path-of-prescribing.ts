/** From a search to a signature, three times: low load, a variation, occlusion with a cuff. */
import { expect, type Page } from '@playwright/test';
import { expectAccessible, press, tickAll } from './support.ts';

const record = '/patients/first-visit';

interface Asked {
  readonly method: 'low-load' | 'variation' | 'occlusion';
  /** What is searched, and the choice out of what is found. */
  readonly found: readonly [string, RegExp];
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
    found: ['seated knee ext', /^Low load, right\s*: Seated knee extension$/],
    picked: [],
    chosen: [],
    typed: [],
    says: [/3 × 15–25\s*4 kg/, /1RM|maximum/],
  },
  {
    method: 'variation',
    found: ['stand up chair 46', /^Variation, both sides\s*: Sit-to-stand, 46 cm$/],
    picked: [],
    chosen: [],
    typed: [],
    says: [/Monitored joints: .*knee/],
  },
  {
    method: 'occlusion',
    found: ['straighten the knee sitting', /^Occlusion, right\s*: Seated knee extension$/],
    picked: [['Scheme', '30, then three times 15 (from memory)']],
    chosen: [
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

const propose = async (page: Page, asked: Asked) => {
  await page.goto(`${record}/prescribe?method=${asked.method}`);
  const [words, choice] = asked.found;
  await page.getByLabel('Name, joint or muscle').fill(words);
  await press(page, 'Find');
  await page.getByRole('link', { name: choice }).click();
  await expect(page.getByRole('button', { name: 'Propose a dose' })).toBeVisible();
  for (const [label, option] of asked.picked) {
    await page.getByLabel(label).selectOption({ label: option });
  }
  for (const [group, answer] of asked.chosen)
    await page.getByRole('group', { name: group }).getByRole('radio', { name: answer, exact: true }).check();
  for (const [label, text] of asked.typed) await page.getByLabel(new RegExp(`^${label}`)).fill(text);
  await press(page, 'Propose a dose');
  const proposal = page.getByRole('region', { name: 'Proposed dose' });
  await expect(proposal).toBeVisible();
  for (const words of asked.says) await expect(proposal).toContainText(words);
  await proposal.getByText(/^\d+ cautions that go with every such dose$/).click();
  await expect(proposal.locator('.cautions li').first()).toBeVisible();
  await expectAccessible(page, `proposal, ${asked.method}`);
  return proposal;
};

/** The first is signed at once; the two others are added and signed together. */
export const prescribeAll = async (page: Page, signer: string) => {
  const [first, ...others] = requests;
  const proposal = await propose(page, first!);
  await proposal.getByRole('button', { name: `Sign 3 × 15–25, 4 kg as ${signer}` }).click();
  await expect(proposal.getByText(`Signed by ${signer}.`)).toBeVisible();
  for (const asked of others) {
    const next = await propose(page, asked);
    await next.getByRole('button', { name: 'Add another' }).click();
    await expect(page.getByText(/^Added\. It waits/)).toBeVisible();
  }
  const together = page.getByRole('region', { name: 'To sign together' });
  await expect(together.getByText(/^30 .* 15 .*108 mmHg/)).toBeVisible();
  await together.getByRole('button', { name: `Sign all 2 as ${signer}` }).click();
  await expect(together.getByText(/^Signed: /)).toHaveCount(2);
};

/** Monday: all three. The cuff stays for days with a clinician beside the patient. */
export const giveWeekdays = async (page: Page) => {
  await page.goto(`${record}/programme`);
  await tickAll(page.getByRole('checkbox', { name: /, Monday$/ }));
  await press(page, 'Save the week');
  await expect(page.getByText(/Saved as version 1/)).toBeVisible();
  await expectAccessible(page, 'programme');
  await page.goto(`${record}/prescriptions`);
  await expect(page.getByText(/signed by Piotr Zawilny/)).toHaveCount(3);
  await expectAccessible(page, 'prescriptions');
};
