'use client';
/** Ends the sign-in on the server, then shows the sign-in page. */
import { useState } from 'react';
import { t } from '#ui/language/words.ts';
import { Button } from '../design-system/button.tsx';
import { endSignIn } from './sign-in/end-sign-in.ts';

export const SignOut = () => {
  const [isGoing, setGoing] = useState(false);
  const leave = async () => {
    setGoing(true);
    await endSignIn().catch(() => null);
    window.location.assign('/sign-in');
  };
  return (
    <Button tone="quiet" disabled={isGoing} onClick={leave}>
      {t('sign-out.go')}
    </Button>
  );
};
