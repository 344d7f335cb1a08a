'use client';
/** Before signing out takes something away, or cannot be done: what there is, and what can be done with it. */
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { t } from '#ui/language/words.ts';
import { isCuffStillOn, type LeftBehind, leave } from './left-behind.ts';

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

/** Nothing is locked or left while a cuff is on: the way leads to its clock. */
const CuffFirst = ({ onStay }: Pick<LeaveQuestionProps, 'onStay'>) => {
  const section = useRef<HTMLElement>(null);
  useEffect(() => {
    section.current?.scrollIntoView({ block: 'center' });
    // Once it is off there is nothing to say any more.
    const look = setInterval(() => void isCuffStillOn().then((isOn) => isOn || onStay()), 2000);
    return () => clearInterval(look);
  }, [onStay]);
  return (
    <section ref={section} className="stack-close" role="alert">
      <h2>{t('leave.cuff-title')}</h2>
      <p>{t('leave.cuff')}</p>
      <LinkButton href="/today" isWide>
        {t('leave.to-cuff')}
      </LinkButton>
    </section>
  );
};

export const LeaveQuestion = (props: LeaveQuestionProps): ReactNode => {
  const { left, hasSignal, onStay } = props;
  const [isAsked, setAsked] = useState(false);
  if (left.isCuffOn) return <CuffFirst onStay={onStay} />;
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
