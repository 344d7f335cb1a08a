'use client';
/** Ends the session on the server, then goes to sign in. */
import { say } from '#messages/en/staff/clinic.ts';
import { endSignIn } from '#ui/account/sign-in/end-sign-in.ts';
import { Button } from '#ui/design-system/button.tsx';

const signOut = async () => {
  await endSignIn();
  // A whole new page, so that nothing of the record stays in memory.
  window.location.assign('/sign-in');
};

export const SignOut = () => (
  <Button tone="quiet" onClick={() => void signOut()}>
    {say('sign-out')}
  </Button>
);
