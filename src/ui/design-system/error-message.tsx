/** What is wrong with one answer and how to put it right; stands between the label and the control. */
import { t } from '#ui/language/words.ts';
import { Mark } from './mark.tsx';

export interface ErrorMessageProps {
  readonly id: string;
  readonly children: string;
}

export const ErrorMessage = ({ id, children }: ErrorMessageProps) => (
  <p className="error-message" id={id}>
    <Mark shape="care" />
    <span>
      <span className="visually-hidden">{t('ask.error')} </span>
      {children}
    </span>
  </p>
);
