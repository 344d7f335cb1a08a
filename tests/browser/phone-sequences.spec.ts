/** Drawn sequences on a phone, and a server that goes and comes back. `npm run soak` plays 200 more. */
import { expect, test } from '@playwright/test';
import { type OwnServer, ownServer } from '#commands/team/phone-sequences/own-server.ts';
import {
  drawSequence,
  openWithWorker,
  phoneOf,
  playSequence,
  untilReady,
} from '#commands/team/phone-sequences/sequence.ts';
import { sessionsOf, storedTwice } from '#commands/team/phone-sequences/stored.ts';
import { answerAll, answerOne } from '#commands/team/phone-sequences/walk.ts';
import { press, untilSaved } from './support.ts';

test.describe('on a server that goes and comes back', () => {
  const first = 20_260_131;
  const people = ['patient-3', 'patient-2'];
  let server: OwnServer;

  test.beforeAll(async () => {
    server = await ownServer();
    await server.start();
  });
  test.afterAll(() => server.remove());

  test(`${people.length} drawn sequences (seeds from ${first}) and a stop of the server leave each session once`, async ({
    browser,
  }) => {
    test.setTimeout(900_000);
    for (const [place, who] of people.entries()) {
      const before = sessionsOf(server.file, who).length;
      const context = await phoneOf(browser, server.address, who);
      expect([first + place, await playSequence(context, drawSequence(first + place))]).toEqual([
        first + place,
        true,
      ]);
      expect([first + place, sessionsOf(server.file, who).length]).toEqual([first + place, before + 1]);
      await context.close();
    }
    const context = await phoneOf(browser, server.address, 'patient-9');
    const page = await openWithWorker(context);
    await press(page, /^Start the (easier )?session$/);
    await answerOne(page);
    await answerOne(page);
    await server.stop();
    await untilSaved(page);
    await page.reload();
    await untilReady(page);
    await answerAll(page);
    await expect(page.getByText('saved on this phone')).toBeVisible();
    await server.start();
    await press(page, 'Back to today');
    await page.reload();
    await expect(page.getByText('Your clinic has today’s session')).toBeVisible({ timeout: 30_000 });
    expect(storedTwice(server.file)).toBe(0);
    await context.close();
  });
});
