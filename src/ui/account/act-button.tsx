'use client';
/** One change with one button, asked about first; the page is read again when it was taken. */
import { useRouter } from 'next/navigation';
import { useId, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Asked } from './asked.tsx';
import { change } from './call.ts';
import { useAsking } from './use-asking.ts';

export interface ActButtonProps {
  readonly path: string;
  readonly input: Readonly<Record<string, unknown>>;
  readonly label: string;
  /** Of whom or what, for those who hear the page. */
  readonly about: string;
  readonly question?: string;
}

export const ActButton = ({ path, input, label, about, question }: ActButtonProps) => {
  const id = useId();
  const router = useRouter();
  const asking = useAsking(id);
  const [isAsked, setAsked] = useState(false);
  const act = () => {
    setAsked(false);
    void asking.ask(
      () => change(path, input),
      () => router.refresh(),
    );
  };
  return (
    <div className="stack-close">
      <Asked asking={asking} />
      {isAsked && question ? (
        <ConfirmQuestion
          question={question}
          yes={label}
          no="Cancel"
          onYes={act}
          onNo={() => setAsked(false)}
        />
      ) : (
        <Button id={id} tone="quiet" onClick={question ? () => setAsked(true) : act}>
          {label}
          <span className="visually-hidden"> {about}</span>
        </Button>
      )}
    </div>
  );
};
