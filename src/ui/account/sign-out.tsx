'use client';
/** Ends the sign-in on the server, then shows the sign-in page. */
import { useState } from 'react';
import { t } from '#ui/language/words.ts';
import { Button } from '../design-system/button.tsx';

export const SignOut = () => {
  const [isGoing, setGoing] = useState(false);
  const leave = async () => {
    setGoing(true);
    await fetch('/api/auth/sign-out', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: '{}',
    }).catch(() => null);
    window.location.assign('/sign-in');
  };
  return (
    <Button tone="quiet" disabled={isGoing} onClick={leave}>
      {t('sign-out.go')}
    </Button>
  );
};
