/** The cookie by which a browser finds again what it typed. It says nothing itself and opens nothing. */
import { parseCookies } from 'better-auth/cookies';
import type { Runtime } from '../../runtime.ts';
import { cookiePrefix } from '../../sign-in/auth.ts';
import { keptSeconds } from './kept-answers.ts';

const isSecure = (at: Runtime): boolean => at.settings.PUBLIC_ORIGIN.startsWith('https://');

const nameAt = (at: Runtime): string => `${isSecure(at) ? '__Secure-' : ''}${cookiePrefix}.form`;

export const markIn = (at: Runtime, headers: Headers): string | null =>
  parseCookies(headers.get('cookie') ?? '').get(nameAt(at)) ?? null;

export const markCookie = (at: Runtime, mark: string): string =>
  `${nameAt(at)}=${mark}; Path=/; Max-Age=${keptSeconds}; HttpOnly; SameSite=Strict${isSecure(at) ? '; Secure' : ''}`;
