'use client';
/** Asks once more about a value that is possible but unlikely. It is a question and not an error. */
import type { ReactNode } from 'react';
import { Button } from './button.tsx';

export interface ConfirmQuestionProps {
  readonly question: ReactNode;
  readonly children?: ReactNode;
  readonly yes: string;
  readonly no: string;
  readonly onYes: () => void;
  readonly onNo: () => void;
}

export const ConfirmQuestion = ({ question, children, yes, no, onYes, onNo }: ConfirmQuestionProps) => (
  <section className="confirm" aria-live="polite">
    <h2>{question}</h2>
    {children}
    <div className="row">
      <Button onClick={onYes}>{yes}</Button>
      <Button tone="plain" onClick={onNo}>
        {no}
      </Button>
    </div>
  </section>
);
