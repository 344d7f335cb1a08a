/** The passphrase or PIN was given within the last minutes. Counted by the system clock, as all of signing in. */
import { refusalText } from '#messages/refusals.ts';
import { Problem } from './errors.ts';
import type { Person } from './person.ts';

export const freshMinutes = 10;

/** A clock that was put back, further than clocks are set right by themselves, leaves nobody fresh for days. */
const clockSetRightMs = 60_000;

export const isFresh = ({ provedAt }: Pick<Person, 'provedAt'>, now: number): boolean =>
  now - provedAt <= freshMinutes * 60_000 && provedAt - now <= clockSetRightMs;

/** Throws unless the person has proved who they are a moment ago. */
export const requireFresh = (person: Person, now = Date.now()): void => {
  if (isFresh(person, now)) return;
  throw new Problem(
    'fresh-sign-in',
    person.role === 'patient'
      ? refusalText('confirm-sign-in')
      : 'Enter your passphrase again to do this. What you entered is still on this page.',
  );
};
