/** A phone a patient was invited on, which opens with a PIN. */
import type { Browser, BrowserContext } from 'playwright-core';
import type { OwnServer } from './own-server.ts';
import { newPhone, phoneOf } from './sequence.ts';
import { read } from './stored.ts';

export const pin = '480263';

const patientOf = (file: string, who: string): string => {
  const asked = 'SELECT patient_id AS id FROM auth_user WHERE email = ?';
  return read<{ id: string }>(file, asked, `${who}@demo.invalid`)[0]!.id;
};

const post = async (context: BrowserContext, address: string, path: string, data: object) => {
  const answer = await context.request.post(path, { data, headers: { origin: address } });
  if (answer.status() !== 200) throw new Error(`${path} answered ${answer.status()}.`);
  return answer.json();
};

export const pinPhoneOf = async (
  browser: Browser,
  { address, file }: Pick<OwnServer, 'address' | 'file'>,
  who: string,
): Promise<BrowserContext> => {
  const office = await phoneOf(browser, address, 'clinician');
  const invited = await post(office, address, '/api/trpc/clinician.phones.invite', {
    patientId: patientOf(file, who),
  });
  await office.close();
  const context = await newPhone(browser, address);
  await post(context, address, '/api/auth/phone/accept', { code: invited.result.data.code });
  await post(context, address, '/api/auth/phone/choose-pin', { pin });
  return context;
};
