/** The browser of a command, and a person of the demo clinic who is signed in with it. */
import type { Browser, BrowserContext } from 'playwright-core';
import { demoPassphrase } from '#demo/clinic.ts';
import { browserArguments, installedBrowser, noBrowserAdvice } from '../browser.mjs';
import { CannotGoOn } from '../say.mjs';

/** `find` may install one; left out, only one that is there is taken. */
export const openBrowser = async (find: () => string | null = installedBrowser): Promise<Browser> => {
  const executablePath = find();
  if (!executablePath) throw new CannotGoOn(noBrowserAdvice);
  const { chromium } = await import('playwright-core');
  return chromium.launch({ executablePath, args: browserArguments });
};

/** Signs in without the page. `who` is the part of the address before "@demo.invalid". */
export const signInAs = async (context: BrowserContext, address: string, who: string): Promise<void> => {
  const answer = await context.request.post('/api/auth/sign-in/email', {
    data: { email: `${who}@demo.invalid`, password: demoPassphrase },
    headers: { origin: address },
  });
  if (answer.status() !== 200) throw new Error(`${who} was not let in: ${answer.status()}.`);
};
