'use client';
/** Looking back on everybody of the clinic under another setting: worked out beside the pages, and stopped by a press. */
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/review/what-if.ts';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { type WhatIfShown, WhatIfView } from '#ui/design-system/what-if/what-if-view.tsx';
import { Working } from '#ui/design-system/what-if/working.tsx';
import type { ReplaySettings } from '../answers.ts';
import { client } from '../client.ts';
import { movedBy, typedIn, weeksBy } from './asked.ts';
import { SettingFields, WeeksField } from './fields.tsx';
import { OnInventedPeople } from './on-invented-people.tsx';

type State =
  | { readonly at: 'open' }
  | { readonly at: 'working'; readonly job: string }
  | { readonly at: 'found'; readonly found: WhatIfShown; readonly moved: Readonly<Record<string, unknown>> }
  | { readonly at: 'refused'; readonly text: string };

const ask = async (form: HTMLFormElement, job: string): Promise<State> => {
  const typed = typedIn(Object.fromEntries(new FormData(form)) as Record<string, string>);
  const moved = movedBy(typed);
  if (!moved) return { at: 'refused', text: say('choose-first') };
  try {
    const found = await client.clinician.replay.everybody.mutate({ moved, weeks: weeksBy(typed), job });
    return { at: 'found', found, moved };
  } catch (error) {
    return { at: 'refused', text: (error as Error).message };
  }
};

const Shown = ({ state }: { readonly state: State }) => {
  if (state.at === 'working') return <Working job={state.job} />;
  if (state.at === 'refused') return <ErrorMessage id="what-if-refused">{state.text}</ErrorMessage>;
  if (state.at === 'open') return <p>{say('warning')}</p>;
  return (
    <div className="stack">
      <WhatIfView found={state.found} />
      <OnInventedPeople moved={state.moved} />
    </div>
  );
};

export const ClinicWhatIf = ({ settings }: { readonly settings: ReplaySettings }) => {
  const [state, setState] = useState<State>({ at: 'open' });
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (state.at === 'working') return;
    const job = crypto.randomUUID();
    setState({ at: 'working', job });
    void ask(event.currentTarget, job).then(setState);
  };
  return (
    <div className="stack">
      <PageHeading>{say('title.clinic')}</PageHeading>
      <p>
        <a href="/rules">{say('back.rules')}</a>
      </p>
      <p>{say('lead')}</p>
      <ScriptedForm className="stack screen-only" onSubmit={submit}>
        <SettingFields settings={settings} typed={{}} />
        <WeeksField typed={{}} />
        <SendButton aria-disabled={state.at === 'working' || undefined}>{say('go')}</SendButton>
      </ScriptedForm>
      <section aria-live="polite">
        <Shown state={state} />
      </section>
    </div>
  );
};
