'use client';
/** Where a person is signed in, with a way to end each, and all at once. */
import { useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import './words.ts';
import { t } from '#ui/language/words.ts';
import { browserInWords } from './browser-in-words.ts';
import { change } from './call.ts';
import { systemMoment } from './system-moment.ts';
import { useAsking } from './use-asking.ts';

export interface SessionLine {
  readonly id: string;
  /** What the browser says of itself. */
  readonly userAgent: string | null;
  readonly isPhone: boolean;
  readonly createdAt: number;
  readonly lastUsedAt: number;
}

export interface SessionsListProps {
  readonly sessions: readonly SessionLine[];
  /** The one that asks. */
  readonly sessionId: string;
  /** The clinic's, whose wall clock signing in goes by. */
  readonly zone: string;
}

export const SessionsList = ({ sessions, sessionId, zone }: SessionsListProps) => {
  const asking = useAsking('sign-out-everywhere');
  const [ended, setEnded] = useState<ReadonlySet<string>>(new Set());
  const end = (id: string) =>
    asking.ask(
      () => change('account.endSession', { sessionId: id }),
      () => setEnded(new Set([...ended, id])),
    );
  const endAll = () =>
    asking.ask(
      () => change('account.endEverywhere'),
      () => window.location.assign('/sign-in'),
    );
  return (
    <div className="stack">
      <ErrorSummary problems={asking.problems} />
      <DefinitionList
        rows={sessions
          .filter((session) => !ended.has(session.id))
          .map((session) => {
            const isThis = session.id === sessionId;
            const where = browserInWords(session.userAgent, session.isPhone);
            const [since, used] = [session.createdAt, session.lastUsedAt].map((at) => systemMoment(at, zone));
            return {
              key: session.id,
              name: isThis ? t('account.this-one', { where }) : where,
              value: (
                <span suppressHydrationWarning>
                  {t('account.since', { since: since ?? '', used: used ?? '' })}
                </span>
              ),
              action: isThis ? null : (
                <Button tone="quiet" onClick={() => void end(session.id)}>
                  {t('account.end')}
                  <span className="visually-hidden"> {where}</span>
                </Button>
              ),
            };
          })}
      />
      <div className="row">
        <Button id="sign-out-everywhere" tone="plain" onClick={() => void endAll()}>
          {t('account.end-all')}
        </Button>
      </div>
    </div>
  );
};
