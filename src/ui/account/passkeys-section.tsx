'use client';
/** Passkeys of a member of staff: what there is, one more, and taking one away. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/account.ts';
import { type Begun, makePasskey } from '#ui/account/sign-in/passkey-browser.ts';
import { Button } from '#ui/design-system/button.tsx';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from './asked.tsx';
import { type Answer, change, postForm } from './call.ts';
import { useAsking } from './use-asking.ts';

export interface PasskeysSectionProps {
  readonly name: string;
  readonly email: string;
  /** False where the clinic is reached by a number instead of a name. */
  readonly canMake: boolean;
  readonly passkeys: readonly {
    readonly id: string;
    readonly name: string;
    readonly made: string;
    readonly lastUsed: string | null;
  }[];
}

const saidNo: Answer<never> = {
  ok: false,
  problem: null,
  text: say('passkey.none-added'),
  refusals: [],
};

const addOne = async (typed: string, props: PasskeysSectionProps): Promise<Answer<unknown>> => {
  const begun = await postForm<Begun>('passkey/begin', {});
  if (!begun.ok) return begun;
  const ids = props.passkeys.map(({ id }) => id);
  const made = await makePasskey(begun.data, { name: props.name, email: props.email }, ids);
  return made ? postForm('passkey/add', { name: typed.trim(), answer: made }) : saidNo;
};

const AddPasskey = (props: PasskeysSectionProps) => {
  const router = useRouter();
  const asking = useAsking('passkey-name');
  const [typed, setTyped] = useState('');
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (typed.trim() === '') return asking.t([{ field: 'passkey-name', text: say('passkey.no-name') }]);
    void asking.ask(
      () => addOne(typed, props),
      () => {
        setTyped('');
        router.refresh();
      },
    );
  };
  return (
    <ScriptedForm className="stack" onSubmit={add}>
      <Asked asking={asking} />
      <TextField
        name="passkey-name"
        label={say('passkey.name')}
        hint={say('passkey.name-hint')}
        autoComplete="off"
        maxLength={60}
        value={typed}
        error={asking.errorOf('passkey-name')}
        onChange={(event) => setTyped(event.target.value)}
      />
      <SendButton>{say('passkey.add')}</SendButton>
    </ScriptedForm>
  );
};

export const PasskeysSection = (props: PasskeysSectionProps) => {
  const router = useRouter();
  const asking = useAsking('passkey-name');
  const remove = (passkeyId: string) =>
    asking.ask(
      () => change('account.removePasskey', { passkeyId }),
      () => router.refresh(),
    );
  return (
    <section className="stack">
      <h2>Passkeys</h2>
      <p>{say('passkeys.note')}</p>
      <Asked asking={asking} />
      <DefinitionList
        rows={props.passkeys.map((one) => ({
          key: one.id,
          name: one.name,
          value: one.lastUsed
            ? say('passkey.used', { made: one.made, used: one.lastUsed })
            : say('passkey.not-used', { made: one.made }),
          action: (
            <Button tone="quiet" onClick={() => void remove(one.id)}>
              Remove<span className="visually-hidden"> {one.name}</span>
            </Button>
          ),
        }))}
      />
      {props.canMake ? <AddPasskey {...props} /> : <p className="soft">{say('passkey.no-address')}</p>}
    </section>
  );
};
