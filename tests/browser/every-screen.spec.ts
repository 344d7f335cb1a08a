/** Every screen of the four users: no accessibility violation, no script error, nothing wider than its window. */
import { expect, test } from '@playwright/test';
import { lookAtScreen } from './looks/looks.ts';
import { desk, expectAccessible, signedIn, watched } from './support.ts';

const clinicianScreens = [
  '/worklist',
  '/patients',
  '/patients/new',
  '/patients/flare-then-hold',
  '/patients/flare-then-hold/screening',
  '/patients/flare-then-hold/measurements',
  '/patients/flare-then-hold/prescribe',
  '/patients/flare-then-hold/prescribe?method=low-load',
  '/patients/flare-then-hold/programme',
  '/patients/flare-then-hold/prescriptions',
  '/patients/flare-then-hold/review',
  '/patients/steady-progress/outcomes',
  '/patients/occlusion-cleared/prescribe?method=occlusion',
  '/patients/steady-progress/prescribe?method=low-load&line=steady-progress-knee',
  '/patients/red-flag/prescribe',
  '/patients/red-flag/review',
  '/patients/red-flag/warning-signs',
  '/worklist?group=not-screened',
  '/patients/flare-then-hold/access',
  '/patients/flare-then-hold/imports',
  '/emergency-access/flare-then-hold',
  '/account',
  '/account/codes',
  '/groups',
  '/groups/monday-group',
  '/groups/monday-group/roster',
  '/group-hour',
  '/templates',
  '/incidents',
  '/calculations',
  '/calculations?words=Blutdruck',
  '/calculations/one-rep-max',
  '/rules',
  '/rules/followed',
  '/administration/figures',
  '/rules/P5',
  '/rules/what-if',
  '/patients/flare-then-hold/review/known-then?at=2026-01-20',
  '/patients/flare-then-hold/review/what-if?joint=right-knee&limit=7&weeks=52',
];
const administratorScreens = [
  '/administration',
  '/administration/machines',
  '/administration/programs',
  '/administration/settings',
  '/administration/settings?group=rules-version',
  '/administration/settings?group=steps-up',
  '/administration/settings?words=Schmerz',
  '/account',
];
const receptionScreens = ['/reception', '/reception?name=a', '/reception/new', '/reception/steady-progress'];
const patientScreens = ['/access-log', '/account', '/today', '/history', '/messages'];

const visits = [
  { who: 'clinician', screens: clinicianScreens },
  { who: 'admin', screens: administratorScreens },
  { who: 'reception', screens: receptionScreens },
  { who: 'patient-2', screens: patientScreens },
] as const;

for (const { who, screens } of visits) {
  test(`${who}: every screen has no accessibility violation in the look whose turn it is, no script error and nothing wider than the window`, async ({
    browser,
    baseURL,
  }) => {
    test.setTimeout(360_000);
    const context = await browser.newContext({ viewport: desk, baseURL });
    await signedIn(context, baseURL!, who);
    const page = await context.newPage();
    const troubles = watched(page);
    for (const screen of screens) {
      await page.goto(screen);
      await expect(page.locator('h1')).toHaveCount(1);
      await lookAtScreen(page, screen);
    }
    expect(troubles).toEqual([]);
    await context.close();
  });
}

test('signing in: a wrong passphrase says how to put it right and keeps the address typed', async ({
  page,
}) => {
  await page.goto('/sign-in');
  await expectAccessible(page, 'sign-in');
  await page.getByLabel(/e-?mail/i).fill('clinician@demo.invalid');
  await page.getByLabel(/passphrase/i).fill('not the passphrase');
  await page.getByRole('button', { name: /sign in/i }).click();
  await expect(page.getByRole('alert').first()).toBeVisible();
  await expect(page.getByLabel(/e-?mail/i)).toHaveValue('clinician@demo.invalid');
  await expectAccessible(page, 'sign-in with an error');
});

test('a page asked for while signed out leads to signing in, and a patient is not let into the clinic’s pages', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ baseURL });
  const page = await context.newPage();
  await page.goto('/worklist');
  await expect(page).toHaveURL(/\/sign-in/);
  await signedIn(context, baseURL!, 'patient-1');
  await page.goto('/patients/steady-progress');
  await expect(page).toHaveURL(/\/today/);
  await context.close();
});
