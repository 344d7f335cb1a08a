/** Phones that a clinic's patients set up, each from a network of its own. */

import { POST } from '../../src/app/api/auth/[...all]/route.ts';
import { asClinician } from './callers.ts';
import type { Setting } from './clinic.ts';
import { type Browser, browser } from './server.ts';

let networks = 0;
export const newPhone = (): Browser => {
  networks += 1;
  return browser(`192.0.2.${networks}`);
};

export const send = (phone: Browser, step: string, body: unknown) =>
  phone.post(POST, `/api/auth/phone/${step}`, body);

export const invite = ({ clinician, patientId }: Setting, of = patientId) =>
  asClinician(clinician).clinician.phones.invite({ patientId: of });

export const goodPin = '482915';

/** A phone with a PIN, signed in. */
export const enrolled = async (setting: Setting, of = setting.patientId): Promise<Browser> => {
  const phone = newPhone();
  await send(phone, 'accept', { code: (await invite(setting, of)).code });
  await send(phone, 'choose-pin', { pin: goodPin });
  return phone;
};
