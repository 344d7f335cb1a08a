/** Sign-in as data: what is wrong with what was typed, and what the server's answer means. */

import { say } from '#ui/words.ts';
import type { Problem } from '../error-summary.tsx';

export const problemsOf = (email: string, passphrase: string): readonly Problem[] => [
  ...(email === ''
    ? [{ field: 'email', text: say('sign-in.no-email') }]
    : /^\S+@\S+$/.test(email)
      ? []
      : [{ field: 'email', text: say('sign-in.email-shape') }]),
  ...(passphrase === '' ? [{ field: 'passphrase', text: say('sign-in.no-passphrase') }] : []),
];

/** null when the person is signed in. `status` is null when nothing answered. */
export const problemAfter = (status: number | null): Problem | null => {
  if (status === null || status >= 500) return { field: 'passphrase', text: say('sign-in.no-answer') };
  if (status === 429) return { field: 'passphrase', text: say('sign-in.too-often') };
  return status >= 400 ? { field: 'passphrase', text: say('sign-in.wrong') } : null;
};
