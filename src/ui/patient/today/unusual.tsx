'use client';
/** What few days need of today's page, fetched when it is wanted. */
import { useRouter } from 'next/navigation';
import { lazy, Suspense, useEffect } from 'react';
import type { EntryKind } from '../outbox/entry-kinds.ts';
import type { SessionDraft } from '../session/draft.ts';
import { lastAnswerAt } from '../session/left-open/away.ts';
import type { EndedBy } from '../session/left-open/ended-by.ts';
import type { DayHandle } from '../use-day.ts';
import type { ExceptionsProps } from './exceptions.tsx';
import { isOutOfTheUsual } from './out-of-the-usual.ts';

interface AtDay {
  readonly at: DayHandle;
}

/** Days out of the usual: seldom, so their scripts come when they are wanted. */
const Exceptions = lazy(() => import('./exceptions.tsx').then((file) => ({ default: file.Exceptions })));

/** A session that is not gone on with: seldom, so its scripts come when they are wanted. */
const EndedSession = lazy(() =>
  import('./ended-session.tsx').then((file) => ({ default: file.EndedSession })),
);

interface OfSession extends AtDay {
  readonly draft: SessionDraft;
  readonly by: EndedBy;
}

export const Ended = ({ at: { session, view }, draft, by }: OfSession) => (
  <Suspense fallback={null}>
    <EndedSession
      draft={draft}
      by={by}
      clinic={view.clinic}
      onSend={() => session.send({ type: 'sent', now: lastAnswerAt(draft) })}
      onThrowAway={session.drop}
    />
  </Suspense>
);

const askedKey = 'loadgate-asked-for';

/**
 * Once in this tab, also over a reload: where the server cannot be reached the page is loaded anew instead, and
 * would otherwise be so again and again.
 */
const wasAskedFor = (answers: string): boolean => {
  try {
    const before = window.sessionStorage.getItem(askedKey);
    window.sessionStorage.setItem(askedKey, answers);
    return before === answers;
  } catch {
    // Without it nothing keeps what was asked; the page stands as it is.
    return true;
  }
};

/**
 * Answers of this phone the page does not know of yet may stand beside those of another, and a session may have
 * changed the plan: the page is asked for once more.
 */
const useKnownAnswers = ({ view, outbox }: DayHandle, refresh: () => void) => {
  const newestOf = (kind: EntryKind): string =>
    outbox.state.entries
      .filter((saved) => saved.kind === kind && saved.day === view.day && saved.status === 'stored')
      .sort((a, b) => b.savedAt - a.savedAt)[0]?.entryId ?? '';
  const [morning, session, sign] = [newestOf('morning'), newestOf('session'), newestOf('sign')];
  const isSessionKnown = session === '' || session === view.sent?.entry.entryId;
  const isSignKnown = (view.knownEntryIds ?? []).includes(sign);
  const unknown = [
    morning === view.morning.entryId ? '' : morning,
    isSessionKnown ? '' : session,
    isSignKnown ? '' : sign,
  ]
    .join(' ')
    .trim();
  const { isOnline } = outbox.state;
  useEffect(() => {
    if (unknown === '' || !isOnline || !navigator.onLine || wasAskedFor(unknown)) return;
    refresh();
  }, [unknown, isOnline, refresh]);
};

export const Unusual = ({ at, state, onMorning }: AtDay & Pick<ExceptionsProps, 'state' | 'onMorning'>) => {
  const router = useRouter();
  useKnownAnswers(at, router.refresh);
  const { view, lacksMs, isReady } = at;
  return isOutOfTheUsual({ view, state, lacksMs }) ? (
    <Suspense fallback={null}>
      <Exceptions
        {...{ view, state, lacksMs, isReady, onMorning }}
        now={at.clock()}
        onChanged={router.refresh}
      />
    </Suspense>
  ) : null;
};
