/** Procedures called from pages on the server, as the person who asked for the page. */
import 'server-only';
import { randomUUID } from 'node:crypto';
import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { cache } from 'react';
import type { Person } from '#api/person.ts';
import { createCaller } from '#api/root.ts';
import { readingOnce } from '#data/database/read-together.ts';
import { runtime } from '../runtime.ts';
import { phoneHere } from '../sign-in/phone-here.ts';
import { observeCalls } from '../telemetry/telemetry.ts';
import { contextFor } from './context.ts';

/**
 * One context per request, shared by the page and its layout. The headers are asked for first: where there
 * is no request, as when the pages are built, nothing is opened.
 */
const requestContext = cache(async () => {
  const asked = await headers();
  const context = await contextFor(runtime(), asked, observeCalls(randomUUID()));
  // A page only asks: its questions look at one and the same record.
  return context.access ? { ...context, reading: readingOnce(context.access.store.read) } : context;
});

export const serverCaller = async () => createCaller(await requestContext());

/** Who is signed in, or null. */
export const signedInPerson = async (): Promise<Person | null> => (await requestContext()).person;

/** An enrolled phone is opened by its PIN; anybody else signs in with an address and a passphrase. */
const toSignIn = async (): Promise<never> => {
  if ((await phoneHere()) === 'none') redirect('/sign-in');
  return redirect('/pin');
};

/** The signed-in person of one of the roles; anybody else is sent to sign in or to their own start. */
export const requirePerson = async (...roles: readonly Person['role'][]): Promise<Person> => {
  const person = await signedInPerson();
  if (!person) return toSignIn();
  if (person.setUp !== 'done') redirect('/account');
  if (!roles.includes(person.role)) redirect('/');
  return person;
};

/** Anybody signed in, also before the sign-in is fully set up: for the pages on which that is done. */
export const requireAnyone = async (): Promise<Person> => {
  const person = await signedInPerson();
  if (!person) return toSignIn();
  return person;
};

/** Who administers the clinic; anybody else is sent to their own start. */
export const requireAdministrator = async (): Promise<Person> => {
  const person = await requirePerson('clinician', 'administrator');
  if (!person.administers) redirect('/');
  return person;
};
