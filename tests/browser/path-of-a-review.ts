/** The clinician again: the worklist, the decision with its reasons, the picture, and an answer to it. */
import { expect, type Page } from '@playwright/test';
import { reviewer } from './path-of-a-clinician.ts';
import { expectAccessible } from './support.ts';

/** The worklist names the patient and the fact; its link leads to the decision. */
export const findOnWorklist = async (page: Page) => {
  await page.goto('/worklist');
  const line = page
    .getByRole('listitem')
    .filter({ has: page.getByRole('link', { name: 'Solveig Ashdrummond', exact: true }) });
  await expect(line).toContainText('Eased back for the right knee');
  await expectAccessible(page, 'worklist with the new decision');
  await line.getByRole('link', { name: 'Solveig Ashdrummond', exact: true }).click();
  await page.waitForURL(/\/review\?joint=right-knee&decision=.*#decision-/);
};

export const readDecision = async (page: Page) => {
  const decision = page.getByRole('article').first();
  await expect(decision).toContainText('Ease back');
  await expect(decision.getByRole('heading', { level: 2 })).toContainText('eased back?');
  // Rule, what was observed, threshold, source.
  const rule = decision.locator('.reason', { hasText: 'P2 Pain over the acceptable pain limit' });
  await expect(rule).toContainText('Found: highest pain of the session: 6; acceptable pain limit: 5');
  await expect(rule).toContainText('Threshold: highest pain over the acceptable pain limit');
  await expect(rule).toContainText('Ageberg');
  await expect(decision).toContainText('applies at once, within the signed dose');
  await expect(page.locator('svg.recharts-surface').first()).toBeVisible();
  await expect(page.locator('.review-words').first()).toContainText(
    'Highest pain reported in a session was 3',
  );
  await page.getByRole('link', { name: 'Show as a table' }).click();
  await expect(page.getByRole('row', { name: /^2026-04-21/ })).toContainText('6');
  await expectAccessible(page, 'review');
};

export const answerDecision = async (page: Page) => {
  const decision = page.getByRole('article').first();
  await decision.getByRole('button', { name: 'Accept' }).click();
  await expect(decision).toContainText(`Accepted by ${reviewer}`);
  await decision.getByText('Override', { exact: true }).first().click();
  await decision
    .getByRole('group', { name: 'Decision instead' })
    .getByRole('radio', { name: 'Hold', exact: true })
    .check();
  await decision.getByLabel('Reason').fill('New shoes on Monday; she wants to keep the dose and will ring.');
  await decision.getByLabel('Last day of the override').fill('2026-04-28');
  await decision.getByRole('button', { name: 'Override' }).click();
  await expect(decision).toContainText(`Overridden with hold until 2026-04-28 by ${reviewer}`);
  await expectAccessible(page, 'review, answered');
};
