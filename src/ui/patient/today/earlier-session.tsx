'use client';
/** A session left open on another day: it can be sent as it stands or thrown away, and is not gone on with. */
import { type ReactNode, useState } from 'react';
import './seldom-words.ts';
import { Button } from '#ui/design-system/button.tsx';
import { dayText } from '#ui/language/text-of-time.ts';
import { t } from '#ui/language/words.ts';
import type { SessionDraft } from '../session/draft.ts';
import { reachedSets } from '../session/steps.ts';

export interface EarlierSessionProps {
  readonly draft: SessionDraft;
  readonly onSend: () => void;
  readonly onThrowAway: () => void;
}

export const EarlierSession = ({ draft, onSend, onThrowAway }: EarlierSessionProps): ReactNode => {
  const [isAsked, setAsked] = useState(false);
  const count = draft.items.reduce((sum, item) => sum + reachedSets(item), 0);
  const date = dayText(draft.day);
  return (
    <section className="first stack-close">
      <h2>{count === 0 ? t('earlier.title-none', { date }) : t('earlier.title', { date, count })}</h2>
      <p>{t('earlier.about')}</p>
      {isAsked ? (
        <div className="stack-close">
          <p role="status">{t('earlier.sure')}</p>
          <Button isLarge isWide tone="plain" onClick={onThrowAway}>
            {t('earlier.yes')}
          </Button>
          <Button isLarge isWide onClick={() => setAsked(false)}>
            {t('earlier.no')}
          </Button>
        </div>
      ) : (
        <>
          <Button isLarge isWide onClick={onSend}>
            {t('earlier.send')}
          </Button>
          <Button isLarge isWide tone="plain" onClick={() => setAsked(true)}>
            {t('earlier.throw-away')}
          </Button>
        </>
      )}
    </section>
  );
};
