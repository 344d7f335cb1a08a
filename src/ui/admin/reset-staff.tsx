'use client';
/** A new passphrase for a colleague who lost theirs, or their phone. */
import { useState } from 'react';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';
import { HandedOver } from './handed-over.tsx';

export const ResetStaff = ({ userId, name }: { readonly userId: string; readonly name: string }) => {
  const asking = useAsking(`reset-${userId}`);
  const [isAsked, setAsked] = useState(false);
  const [passphrase, setPassphrase] = useState<string | null>(null);
  if (passphrase) return <HandedOver name={name} passphrase={passphrase} />;
  const reset = () => {
    setAsked(false);
    void asking.ask(
      () => change<{ passphrase: string }>('admin.staff.reset', { userId }),
      (handed) => setPassphrase(handed.passphrase),
    );
  };
  return (
    <div className="stack-close">
      <Asked asking={asking} />
      {isAsked ? (
        <ConfirmQuestion
          question={say('reset-question', { name })}
          yes={say('reset')}
          no="Cancel"
          onYes={reset}
          onNo={() => setAsked(false)}
        />
      ) : (
        <Button id={`reset-${userId}`} tone="quiet" onClick={() => setAsked(true)}>
          {say('reset')}
          <span className="visually-hidden"> {say('reset-for', { name })}</span>
        </Button>
      )}
    </div>
  );
};
