/** What is kept on this phone and what has reached the clinic, in plain words. */

import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { timeText } from '#ui/language/text-of-time.ts';
import { t } from '../words.ts';
import { type Outbox, type Saved, waiting } from './outbox.ts';

export interface SavedHereProps {
  readonly state: Outbox;
  readonly isLasting: boolean;
  readonly phone: string;
  readonly onSend: () => void;
}

const tags = {
  waiting: { shape: 'waiting', tone: 'care', text: 'entry.waiting' },
  stored: { shape: 'done', tone: 'plain', text: 'entry.stored' },
  aside: { shape: 'care', tone: 'danger', text: 'entry.aside' },
} as const;

const Entries = ({ entries }: { readonly entries: readonly Saved[] }) => (
  <DefinitionList
    rows={[...entries]
      .sort((a, b) => b.savedAt - a.savedAt)
      .map((saved) => {
        const tag = tags[saved.status];
        return {
          key: saved.entryId,
          name: t('entry.at', { kind: t(`entry.${saved.kind}`), time: timeText(saved.savedAt) }),
          value: (
            <StatusTag shape={tag.shape} tone={tag.tone}>
              {t(tag.text)}
            </StatusTag>
          ),
        };
      })}
  />
);

const stateText = (state: Outbox): string => {
  const count = waiting(state).length;
  if (count === 0) return t('saved.all-sent');
  if (state.isSignedOut) return t('saved.signed-out');
  if (!state.isOnline) return t('saved.no-signal');
  if (state.sendingId !== null) return t('saved.sending');
  return t('saved.waiting', { count });
};

/** Said before anything is lost by it: in the middle of a session as well. */
export const NotSaved = () => <Notice tone="care" title={t('saved.not-kept')} />;

export const SavedHere = ({ state, isLasting, phone, onSend }: SavedHereProps) => {
  const isAside = state.entries.some((saved) => saved.status === 'aside');
  const isWaiting = waiting(state).length > 0;
  return (
    <>
      {isLasting ? null : <NotSaved />}
      {isAside ? (
        <Notice
          tone="danger"
          title={<RingText text={t('saved.kept-aside', { phone })} clinic={{ phone }} />}
        />
      ) : null}
      {state.entries.length === 0 ? null : (
        <section className="saved stack-close">
          <p aria-live="polite">{stateText(state)}</p>
          {isWaiting && state.isSignedOut ? (
            <LinkButton href="/sign-in" tone="plain">
              {t('saved.sign-in')}
            </LinkButton>
          ) : isWaiting && state.sendingId === null ? (
            <Button tone="plain" onClick={onSend}>
              {t('saved.try-now')}
            </Button>
          ) : null}
          <Disclosure summary={t('saved.title')}>
            <Entries entries={state.entries} />
          </Disclosure>
        </section>
      )}
    </>
  );
};
