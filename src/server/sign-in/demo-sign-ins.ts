/** The invented people who may sign in, for the sign-in page; null outside the demo. */
import { demoPassphrase, demoSignIns } from '#demo/clinic.ts';
import { runtime } from '../runtime.ts';

export const demoSignInList = () =>
  runtime().settings.DEMO
    ? {
        people: demoSignIns.map(({ email, who, story }) => ({ email, about: `${who}: ${story}` })),
        passphrase: demoPassphrase,
      }
    : undefined;
