'use client';
/** Asks once more about a value that is possible but unlikely. It is a question and not an error. */
import type { ReactNode } from 'react';
import { Button } from './button.tsx';

export interface ConfirmQuestionProps {
  readonly question: ReactNode;
  readonly children?: ReactNode;
  readonly yes: string;
  readonly no: string;
  readonly onYes?: () => void;
  /** In place of onYes: the name under which "yes" is sent with the form around it, before scripts as well. */
  readonly sendsYes?: string;
  readonly onNo: () => void;
  /** A slip is likelier than what was typed: "no" is the filled button and stands first. */
  readonly isNoFirst?: boolean;
}

const YesButton = ({
  yes,
  onYes,
  sendsYes,
  isNoFirst = false,
}: Pick<ConfirmQuestionProps, 'yes' | 'onYes' | 'sendsYes' | 'isNoFirst'>) => {
  const tone = isNoFirst ? 'plain' : 'primary';
  return sendsYes ? (
    <Button type="submit" tone={tone} name={sendsYes} value="yes">
      {yes}
    </Button>
  ) : (
    <Button tone={tone} onClick={onYes}>
      {yes}
    </Button>
  );
};

/** Before scripts it sends what was changed, unconfirmed. */
const NoButton = ({ no, onNo, sendsYes, isNoFirst }: Omit<ConfirmQuestionProps, 'question' | 'yes'>) => (
  <Button
    type={sendsYes ? 'submit' : 'button'}
    tone={isNoFirst ? 'primary' : 'plain'}
    onClick={(event) => {
      event.preventDefault();
      onNo();
    }}
  >
    {no}
  </Button>
);

export const ConfirmQuestion = ({ question, children, ...ways }: ConfirmQuestionProps) => (
  <section className="confirm" aria-live="polite">
    <h2>{question}</h2>
    {children}
    <div className="row">
      {ways.isNoFirst ? <NoButton {...ways} /> : null}
      <YesButton {...ways} />
      {ways.isNoFirst ? null : <NoButton {...ways} />}
    </div>
  </section>
);
