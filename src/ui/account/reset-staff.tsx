'use client';
/** A new passphrase for a colleague who lost theirs, or their phone. */
import { useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { ConfirmQuestion } from '#ui/shared/confirm-question.tsx';
import { Asked } from './asked.tsx';
import { change } from './call.ts';
import { HandedOver } from './handed-over.tsx';
import { useAsking } from './use-asking.ts';

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
          question={`Give ${name} a new passphrase? Their codes are switched off and they are signed out everywhere.`}
          yes="New passphrase"
          no="Leave it"
          onYes={reset}
          onNo={() => setAsked(false)}
        />
      ) : (
        <Button id={`reset-${userId}`} tone="quiet" onClick={() => setAsked(true)}>
          New passphrase<span className="visually-hidden"> for {name}</span>
        </Button>
      )}
    </div>
  );
};
