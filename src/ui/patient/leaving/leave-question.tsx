'use client';
/** Before signing out takes something away, or cannot be done: what there is, and what can be done with it. */
import { type ReactNode, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { t } from '#ui/language/words.ts';
import { type LeftBehind, leave } from './left-behind.ts';

export { leave, leftBehind } from './left-behind.ts';
export { haveWords } from './words.ts';

export interface LeaveQuestionProps {
  readonly left: LeftBehind;
  readonly hasSignal: boolean;
  readonly onStay: () => void;
}

const titleOf = ({ left, hasSignal }: LeaveQuestionProps): string =>
  left.begun > 0
    ? t('leave.unfinished', { count: left.begun })
    : t(hasSignal ? 'leave.unsent-title' : 'leave.no-signal-title');

const ThrowAway = ({ onAsk, isAsked }: { readonly onAsk: () => void; readonly isAsked: boolean }) =>
  isAsked ? (
    <>
      <p role="status">{t('leave.sure')}</p>
      <Button tone="plain" isWide onClick={() => void leave(false)}>
        {t('leave.yes')}
      </Button>
    </>
  ) : (
    <Button tone="quiet" onClick={onAsk}>
      {t('leave.throw-away')}
    </Button>
  );

export const LeaveQuestion = (props: LeaveQuestionProps): ReactNode => {
  const { left, hasSignal, onStay } = props;
  const [isAsked, setAsked] = useState(false);
  const word = left.begun > 0 ? 'leave.lock' : hasSignal ? 'leave.go' : 'leave.lock-only';
  return (
    <section className="stack-close" aria-live="polite">
      <h2>{titleOf(props)}</h2>
      {left.unsent > 0 ? <p>{t('leave.unsent', { count: left.unsent })}</p> : null}
      {hasSignal ? null : <p>{t('leave.no-signal')}</p>}
      <Button isWide onClick={onStay}>
        {t('leave.stay')}
      </Button>
      <Button tone="plain" isWide onClick={() => void leave(true)}>
        {t(word)}
      </Button>
      {left.begun > 0 ? <ThrowAway isAsked={isAsked} onAsk={() => setAsked(true)} /> : null}
    </section>
  );
};
