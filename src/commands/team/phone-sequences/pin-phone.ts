/** A phone a patient was invited on, which opens with a PIN. */
import type { Browser, BrowserContext } from 'playwright-core';
import { newPhone, phoneOf } from './sequence.ts';

export const pin = '480263';

const post = async (context: BrowserContext, address: string, path: string, data: object) => {
  const answer = await context.request.post(path, { data, headers: { origin: address } });
  if (answer.status() !== 200) throw new Error(`${path} answered ${answer.status()}.`);
  return answer.json();
};

export const pinPhoneOf = async (
  browser: Browser,
  address: string,
  patientId: string,
): Promise<BrowserContext> => {
  const office = await phoneOf(browser, address, 'clinician');
  const invited = await post(office, address, '/api/trpc/clinician.phones.invite', { patientId });
  await office.close();
  const context = await newPhone(browser, address);
  await post(context, address, '/api/auth/phone/accept', { code: invited.result.data.code });
  await post(context, address, '/api/auth/phone/choose-pin', { pin });
  return context;
};
