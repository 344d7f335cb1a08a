'use client';
/** Beside a look back: the same setting on the invented people of the trial, who do answer to another dose. */
import { useState } from 'react';
import { say } from '#messages/en/staff/review/what-if.ts';
import { say as sayRules } from '#messages/en/staff/rules.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import type { SettingsTried, TrialRow } from '../answers.ts';
import { client } from '../client.ts';
import type { TrialPoint } from '../rules/invented/trial-points.ts';
import { TrialTable } from '../rules/invented/trial-table.tsx';

type State = 'open' | 'running' | { readonly found: SettingsTried } | { readonly refused: string };

const meanOf = (rows: readonly TrialRow[]): TrialRow => rows.find(({ type }) => type === 'all')!;

const figuresOf = ({ strengthPercent, badDays, loadCausedBadDays, clinicianActions, finalDose }: TrialRow) =>
  [strengthPercent, badDays, loadCausedBadDays, clinicianActions, finalDose].join(' ');

export const TriedTable = ({ found: { people, weeks, now, tried } }: { readonly found: SettingsTried }) => {
  const [before, after] = [meanOf(now), meanOf(tried)];
  const named = (row: TrialRow, name: string, kind: TrialPoint['kind']): TrialPoint => ({
    ...row,
    ...{ arm: name, name, label: name, kind },
  });
  return (
    <div className="stack-close">
      <TrialTable
        caption={say('invented.of', { people, weeks })}
        points={[named(before, say('invented.now'), 0), named(after, say('invented.tried'), 'own')]}
      />
      {figuresOf(before) === figuresOf(after) ? <p>{say('invented.same')}</p> : null}
      <p className="soft">{sayRules('table-about')}</p>
      <p>{sayRules('invented')}</p>
    </div>
  );
};

/** `moved`: settings alone, as typed; who is refused is told why. */
export const OnInventedPeople = ({ moved }: { readonly moved: Readonly<Record<string, unknown>> }) => {
  const [state, setState] = useState<State>('open');
  const run = async () => {
    setState('running');
    try {
      setState({ found: await client.clinician.inventedPeople.trySettings.mutate({ moved }) });
    } catch (error) {
      setState({ refused: (error as Error).message });
    }
  };
  return (
    <div className="stack-close screen-only">
      <Button
        tone="plain"
        aria-disabled={state === 'running' || undefined}
        onClick={() => (state === 'running' ? undefined : void run())}
      >
        {say('invented.run')}
      </Button>
      <div aria-live="polite">
        {state === 'running' ? <p>{say('invented.running')}</p> : null}
        {typeof state === 'object' && 'found' in state ? <TriedTable found={state.found} /> : null}
        {typeof state === 'object' && 'refused' in state ? (
          <ErrorMessage id="invented-refused">{state.refused}</ErrorMessage>
        ) : null}
      </div>
    </div>
  );
};
