/**
 * The whole job once, on a server and a clock of its own: a clinician at the desk, the patient on the
 * phone that evening and next morning, the clinician again. Each page visited has no accessibility violation.
 */
import { expect, test } from '@playwright/test';
import { type OwnServer, ownServer } from '#commands/team/phone-sequences/own-server.ts';
import {
  consentAndClear,
  measure,
  openRecord,
  readWhyContraindicated,
  reviewer,
  screen,
  signInWithCode,
} from './path-of-a-clinician.ts';
import { morning, patientOnPhone, readWhatChanged, session } from './path-of-a-patient.ts';
import { answerDecision, findOnWorklist, readDecision } from './path-of-a-review.ts';
import { giveWeekdays, prescribeAll } from './path-of-prescribing.ts';
import { desk, moveClock, watched } from './support.ts';

// A control that is not there is said at once, not after the whole time of the test.
test.use({ actionTimeout: 10_000 });
test.setTimeout(360_000);

let server: OwnServer;
test.beforeAll(async () => {
  server = await ownServer();
  await server.start();
});
test.afterAll(() => server.remove());

test('from an empty record to a decision a clinician has answered', async ({ browser }) => {
  const context = await browser.newContext({ viewport: desk, baseURL: server.address });
  const page = await context.newPage();
  const troubles = watched(page);
  await signInWithCode(page);
  await openRecord(page);
  await screen(page);
  await measure(page);
  await readWhyContraindicated(page);
  await consentAndClear(page);
  await prescribeAll(page, reviewer);
  await giveWeekdays(page);

  await moveClock(context, '2026-04-20T18:00:00+01:00');
  const [phone, hers] = await patientOnPhone(browser, server.address);
  const hersToo = watched(hers);
  await session(hers);
  await moveClock(context, '2026-04-21T07:30:00+01:00');
  await morning(hers);
  await readWhatChanged(hers);

  await findOnWorklist(page);
  await readDecision(page);
  await answerDecision(page);

  expect([...troubles, ...hersToo]).toEqual([]);
  await phone.close();
  await context.close();
});
