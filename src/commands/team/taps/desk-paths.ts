/** Paths at the desk, as a clinician with a pointer and a keyboard does them, and what then stands in the file. */
import type { Locator, Page } from 'playwright-core';
import { read } from '../phone-sequences/stored.ts';
import { firstVisits } from './desk-first-visit.ts';
import { type DeskPath, differsIn, type Hand } from './desk-path.ts';
import { lowLoadKnownPatient } from './desk-prescribe.ts';
import { tapsNow } from './people.ts';

const rowOf = (page: Page, who: string): Locator =>
  page.locator('.worklist-row').filter({ has: page.getByRole('link', { name: `Test ${who}`, exact: true }) });

const said = (page: Page, who: string, text: string): Promise<void> =>
  rowOf(page, who).getByText(text).first().waitFor();

const recordContact = async (page: Page, { press, fill }: Hand) => {
  const row = rowOf(page, 'desk-sign');
  await press(row.getByRole('button', { name: /^Record contact .*desk-sign/ }));
  await press(row.getByText('The patient', { exact: true }));
  await fill(row.getByLabel('Found'), 'Calf soft, no swelling.');
  await fill(row.getByLabel('Advised'), 'Ring again if it swells.');
  await press(row.getByRole('button', { name: 'Record contact', exact: true }));
  await said(page, 'desk-sign', 'Contact recorded.');
};

const typeInMorning = async (page: Page, { press, fill, choose }: Hand) => {
  await press(rowOf(page, 'desk-silent').getByRole('link', { name: /^Type in answers/ }));
  await page.waitForURL(/data-entry/);
  await press(page.getByText('A morning', { exact: true }));
  await press(page.locator('input[value="clinic-by-phone"]'));
  await fill(page.locator('#day'), tapsNow.slice(0, 10));
  await choose(page.locator('#pain-right-knee'), '2');
  await fill(page.locator('#stiffness-right-knee'), '10');
  await choose(page.locator('#swelling-right-knee'), 'none');
  await choose(page.locator('#flare-right-knee'), 'no');
  await choose(page.locator('#relief'), 'no');
  await choose(page.locator('#flags'), 'none');
  await press(page.getByRole('button', { name: 'Save these answers' }));
  await page.getByText('Saved', { exact: false }).first().waitFor();
  await press(page.getByRole('link', { name: 'Worklist', exact: true }));
  await page.waitForURL(/worklist/);
};

const sign = async (page: Page, { press }: Hand, who: string) => {
  await press(rowOf(page, who).getByRole('button', { name: /^Sign \d/ }));
  await said(page, who, 'Signed: ');
};

const reply = async (page: Page, { press, fill }: Hand) => {
  const row = rowOf(page, 'desk-message');
  await press(row.getByRole('button', { name: /^Reply .*desk-message/ }));
  await fill(row.getByRole('textbox'), 'Yes, the evening is fine.');
  await press(row.getByRole('button', { name: 'Send', exact: true }));
  await said(page, 'desk-message', 'It may have been read');
};

const snooze = async (page: Page, { press, fill }: Hand) => {
  const row = rowOf(page, 'desk-review');
  await press(row.getByRole('button', { name: /^More for / }));
  await press(page.getByRole('menuitem', { name: /^Snooze/ }));
  await fill(row.getByLabel('Until'), '2026-04-24');
  await fill(row.getByLabel('Reason'), 'Comes tomorrow.');
  await press(row.getByRole('button', { name: 'Snooze', exact: true }));
  await said(page, 'desk-review', 'Snoozed until');
};

const count = (file: string, question: string, ...values: readonly string[]): number =>
  read<{ n: number }>(file, `SELECT count(*) AS n ${question}`, ...values)[0]!.n;

const signedNow = (file: string, who: string): number =>
  count(
    file,
    'FROM signature s JOIN prescription p ON p.id = s.prescription_id WHERE p.patient_id = ? AND p.origin = ?',
    who,
    'progress',
  );

export const deskPaths: readonly DeskPath[] = [
  {
    path: 'worklist-round-of-six',
    mostTaps: 20,
    mostPages: 4,
    walk: async (page, hand) => {
      await recordContact(page, hand);
      await typeInMorning(page, hand);
      await sign(page, hand, 'desk-dose');
      await sign(page, hand, 'desk-dose-too');
      await reply(page, hand);
      await snooze(page, hand);
    },
    differs: (file) =>
      differsIn({
        'a contact that reached the patient':
          count(file, "FROM contact_attempt WHERE patient_id = ? AND reached = 'patient'", 'desk-sign') === 1,
        'the morning with its pain':
          count(
            file,
            'FROM morning m JOIN morning_joint j ON j.morning_id = m.id WHERE m.patient_id = ? AND m.day = ? AND j.pain_0_10 = 2',
            'desk-silent',
            tapsNow.slice(0, 10),
          ) === 1,
        'two signatures': signedNow(file, 'desk-dose') + signedNow(file, 'desk-dose-too') === 2,
        'the reply': count(file, 'FROM message WHERE patient_id = ?', 'desk-message') === 1,
        'the day it is snoozed to':
          count(file, "FROM worklist_item_action WHERE patient_id = ? AND act = 'snooze'", 'desk-review') ===
          1,
      }),
  },
  {
    path: 'sign-week',
    mostTaps: 2,
    mostPages: 1,
    walk: async (page, { press }) => {
      const row = rowOf(page, 'desk-week');
      await press(row.getByRole('button', { name: /^Open 2 doses/ }));
      await press(row.getByRole('button', { name: /^Sign all 2/ }));
      await row.locator('.row-done').nth(1).waitFor();
    },
    differs: (file) => differsIn({ 'two signatures': signedNow(file, 'desk-week') === 2 }),
  },
  lowLoadKnownPatient,
  ...firstVisits,
];
