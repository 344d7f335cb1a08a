/** What the phone that asks for a page is: unknown, or enrolled and waiting for its PIN. */
import 'server-only';
import { parseCookies } from 'better-auth/cookies';
import { headers } from 'next/headers';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import { clinicBeforeSignIn, phoneOf } from '#data/accounts/phones.ts';
import { hoursText } from '#messages/hours.ts';
import { runtime } from '../runtime.ts';
import { cookiePrefix } from './auth.ts';
import { phoneState } from './phone-sign-in.ts';

/** Headers before the runtime: where there is no request, as when the pages are built, nothing is opened. */
const phoneCookie = async (): Promise<string | null> => {
  const cookies = parseCookies((await headers()).get('cookie') ?? '');
  const isSecure = runtime().settings.PUBLIC_ORIGIN.startsWith('https://');
  return cookies.get(`${isSecure ? '__Secure-' : ''}${cookiePrefix}.phone`) ?? null;
};

export const phoneHere = async () => {
  const cookie = await phoneCookie();
  const at = runtime();
  return phoneState({ store: at.store, auditKey: at.keys.audit, now: at.clock.now() }, cookie);
};

/** The enrolled phone that asks, by the id it has in a list of phones; null in any other browser. */
export const phoneIdHere = async (): Promise<string | null> =>
  (await phoneOf(runtime().store, await phoneCookie()))?.id ?? null;

/** Known before anybody signs in: the clinic of an enrolled phone, or the only one of the file. */
export const clinicHere = async () => {
  const cookie = await phoneCookie();
  const clinic = await clinicBeforeSignIn(runtime().store, cookie);
  return (
    clinic && {
      ...clinic,
      urgentNumber: urgentNumberOf(clinic),
      monitoringHours: hoursText(clinic.monitoringHours),
    }
  );
};
