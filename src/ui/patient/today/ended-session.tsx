'use client';
/** A session left open and not gone on with: it can be sent as it stands or thrown away. */
import { type ReactNode, useState } from 'react';
import './seldom-words.ts';
import type { TodayView } from '#api/patient/today-view.ts';
import { Button } from '#ui/design-system/button.tsx';
import { dayText } from '#ui/language/text-of-time.ts';
import { t } from '#ui/language/words.ts';
import type { SessionDraft } from '../session/draft.ts';
import type { EndedBy } from '../session/left-open/ended-by.ts';
import { isLimbChanged } from '../session/left-out.ts';
import { RingNotice } from './contact-first.tsx';

export interface EndedSessionProps {
  readonly draft: SessionDraft;
  readonly by: EndedBy;
  readonly clinic: TodayView['clinic'];
  readonly onSend: () => void;
  readonly onThrowAway: () => void;
}

/** Sets of which something was done; one that was stopped before is none. */
const setsDone = ({ items }: SessionDraft): number =>
  items
    .flatMap(({ sets }) => sets)
    .filter(({ repetitions, lostCount }) => lostCount || (repetitions ?? 0) > 0).length;

const Title = ({ draft, by }: Pick<EndedSessionProps, 'draft' | 'by'>) => {
  const [date, count] = [dayText(draft.day), setsDone(draft)];
  if (by === 'plan-changed') return <h2>{t('ended.plan-title')}</h2>;
  return <h2>{count === 0 ? t('ended.title-none', { date }) : t('ended.title', { date, count })}</h2>;
};

const about = (draft: SessionDraft, by: EndedBy): string =>
  by === 'another-day'
    ? t('ended.about')
    : setsDone(draft) === 0
      ? t('ended.plan-about-none')
      : t('ended.plan-about', { count: setsDone(draft) });

const ThrowAway = ({ onYes, onNo }: { readonly onYes: () => void; readonly onNo: () => void }) => (
  <div className="stack-close">
    <p role="status">{t('ended.sure')}</p>
    <Button isLarge isWide tone="plain" onClick={onYes}>
      {t('ended.yes')}
    </Button>
    <Button isLarge isWide onClick={onNo}>
      {t('ended.no')}
    </Button>
  </div>
);

export const EndedSession = ({ draft, by, clinic, onSend, onThrowAway }: EndedSessionProps): ReactNode => {
  const [isAsked, setAsked] = useState(false);
  // What was told of fingers or toes reaches the clinic: it is not offered to be thrown away.
  const isLimbTold = draft.items.some(isLimbChanged);
  return (
    <section className="first stack-close">
      <Title draft={draft} by={by} />
      {isLimbTold ? (
        <RingNotice clinic={clinic} text={t('ended.limb', { clinic: clinic.name, phone: clinic.phone })} />
      ) : null}
      <p>{about(draft, by)}</p>
      {isAsked ? (
        <ThrowAway onYes={onThrowAway} onNo={() => setAsked(false)} />
      ) : (
        <>
          <Button isLarge isWide onClick={onSend}>
            {t('ended.send')}
          </Button>
          {isLimbTold ? null : (
            <Button isLarge isWide tone="plain" onClick={() => setAsked(true)}>
              {t('ended.throw-away')}
            </Button>
          )}
        </>
      )}
    </section>
  );
};
