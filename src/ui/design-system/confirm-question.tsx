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
}

const YesButton = ({ yes, onYes, sendsYes }: Pick<ConfirmQuestionProps, 'yes' | 'onYes' | 'sendsYes'>) =>
  sendsYes ? (
    <Button type="submit" name={sendsYes} value="yes">
      {yes}
    </Button>
  ) : (
    <Button onClick={onYes}>{yes}</Button>
  );

export const ConfirmQuestion = ({ question, children, no, onNo, sendsYes, ...way }: ConfirmQuestionProps) => (
  <section className="confirm" aria-live="polite">
    <h2>{question}</h2>
    {children}
    <div className="row">
      <YesButton {...way} sendsYes={sendsYes} />
      {/* Before scripts it sends what was changed, unconfirmed. */}
      <Button
        type={sendsYes ? 'submit' : 'button'}
        tone="plain"
        onClick={(event) => {
          event.preventDefault();
          onNo();
        }}
      >
        {no}
      </Button>
    </div>
  </section>
);
