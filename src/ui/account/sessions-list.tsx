'use client';
/** Where a person is signed in, with a way to end each, and all at once. */
import { useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { DefinitionList } from '#ui/shared/definition-list.tsx';
import { Asked } from './asked.tsx';
import { change } from './call.ts';
import { useAsking } from './use-asking.ts';

export interface SessionLine {
  readonly id: string;
  /** "Firefox on Linux". */
  readonly where: string;
  readonly since: string;
  readonly lastUsed: string;
  readonly isThis: boolean;
}

export const SessionsList = ({ sessions }: { readonly sessions: readonly SessionLine[] }) => {
  const asking = useAsking('sign-out-everywhere');
  const [ended, setEnded] = useState<ReadonlySet<string>>(new Set());
  const end = (sessionId: string) =>
    asking.ask(
      () => change('account.endSession', { sessionId }),
      () => setEnded(new Set([...ended, sessionId])),
    );
  const endAll = () =>
    asking.ask(
      () => change('account.endEverywhere'),
      () => window.location.assign('/sign-in'),
    );
  return (
    <div className="stack">
      <Asked asking={asking} />
      <DefinitionList
        rows={sessions
          .filter((session) => !ended.has(session.id))
          .map((session) => ({
            key: session.id,
            name: session.isThis ? `${session.where} (this one)` : session.where,
            value: `Since ${session.since}, last used ${session.lastUsed}`,
            action: session.isThis ? null : (
              <Button tone="quiet" onClick={() => void end(session.id)}>
                End<span className="only-heard"> {session.where}</span>
              </Button>
            ),
          }))}
      />
      <div className="row">
        <Button id="sign-out-everywhere" tone="plain" onClick={() => void endAll()}>
          Sign out everywhere
        </Button>
      </div>
    </div>
  );
};
