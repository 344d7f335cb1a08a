'use client';
/** Ends one lost phone, once what this does and what it does not has been read and said yes to. */
import { useId, useState } from 'react';
import type { EndedPhone } from '#api/patient/phones.ts';
import { Asked, type AskedProps } from '#ui/account/asked.tsx';
import { change } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import './own-phones-words.ts';
import { t } from '#ui/language/words.ts';

const told = [
  'phones.does',
  'phones.erases-nothing',
  'phones.unsent',
  'phones.still-seen',
  'phones.new-phone',
] as const;

export interface EndQuestionProps {
  readonly onYes: () => void;
  readonly onNo: () => void;
}

export const EndQuestion = (props: EndQuestionProps) => (
  <ConfirmQuestion question={t('phones.sure')} yes={t('phones.end')} no={t('phones.keep')} {...props}>
    {told.map((key) => (
      <p key={key}>{t(key)}</p>
    ))}
  </ConfirmQuestion>
);

export interface LostPhoneProps {
  readonly phoneId: string;
  /** Which one, for those who hear the page. */
  readonly about: string;
  readonly provenBy: NonNullable<AskedProps['by']>;
  readonly onEnded: (answer: EndedPhone) => void;
}

export const LostPhone = ({ phoneId, about, provenBy, onEnded }: LostPhoneProps) => {
  const id = useId();
  const asking = useAsking(id);
  const [isAsked, setAsked] = useState(false);
  const end = () => {
    setAsked(false);
    void asking.ask(
      () => change<{ ended: EndedPhone }>('patient.phones.end', { phoneId }),
      ({ ended }) => onEnded(ended),
    );
  };
  return (
    <div className="stack-close">
      <Asked asking={asking} by={provenBy} />
      {isAsked ? (
        <EndQuestion onYes={end} onNo={() => setAsked(false)} />
      ) : (
        <Button
          id={id}
          tone="quiet"
          aria-disabled={asking.isBusy || undefined}
          onClick={() => setAsked(true)}
        >
          {t('phones.lost')}
          <span className="visually-hidden" suppressHydrationWarning>
            {' '}
            {about}
          </span>
        </Button>
      )}
    </div>
  );
};
