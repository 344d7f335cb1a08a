/** What the phone that asks for a page is: unknown, or enrolled and waiting for its PIN. */
import 'server-only';
import { parseCookies } from 'better-auth/cookies';
import { headers } from 'next/headers';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import { clinicBeforeSignIn } from '#data/accounts/phones.ts';
import { hoursText } from '#messages/hours.ts';
import { runtime } from '../runtime.ts';
import { cookiePrefix } from './auth.ts';
import { phoneState } from './phone-sign-in.ts';

const phoneCookie = async (): Promise<string | null> => {
  const isSecure = runtime().settings.PUBLIC_ORIGIN.startsWith('https://');
  const name = `${isSecure ? '__Secure-' : ''}${cookiePrefix}.phone`;
  return parseCookies((await headers()).get('cookie') ?? '').get(name) ?? null;
};

export const phoneHere = async () => {
  const at = runtime();
  const context = { store: at.store, auditKey: at.keys.audit, now: at.clock.now() };
  return phoneState(context, await phoneCookie());
};

/** Known before anybody signs in: the clinic of an enrolled phone, or the only one of the file. */
export const clinicHere = async () => {
  const clinic = await clinicBeforeSignIn(runtime().store, await phoneCookie());
  return (
    clinic && {
      ...clinic,
      urgentNumber: urgentNumberOf(clinic),
      monitoringHours: hoursText(clinic.monitoringHours),
    }
  );
};
