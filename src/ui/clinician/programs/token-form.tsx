'use client';
/** A new token for another program, shown once. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useId, useState } from 'react';
import { tokenScopes } from '#core/clinic/token-scopes.ts';
import { say } from '#messages/en/staff/administration/programs.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckField } from '#ui/design-system/checkbox-group.tsx';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../../account/asked.tsx';
import { change } from '../../account/call.ts';
import { useAsking } from '../../account/use-asking.ts';
import { makeProgramToken, scopeField, type TokenDays, tokenDays } from './token-form-sent.ts';

type Typed = Readonly<Record<string, string | undefined>>;

interface FieldsProps {
  readonly typed: Typed;
  readonly errorOf: (field: string) => string | undefined;
  readonly onType: (more: Typed) => void;
}

const Scopes = ({ typed, errorOf, onType }: FieldsProps) => {
  const id = useId();
  const error = errorOf(scopeField(tokenScopes[0]));
  return (
    <fieldset className="field" aria-describedby={error ? id : undefined}>
      <legend className="field-legend">{say('make.scopes')}</legend>
      {error ? <ErrorMessage id={id}>{error}</ErrorMessage> : null}
      <div className="choices">
        {tokenScopes.map((scope) => (
          <CheckField
            key={scope}
            name={scopeField(scope)}
            value="yes"
            label={say(`scope.${scope}`)}
            isChecked={typed[scopeField(scope)] === 'yes'}
            onSwitch={(isChecked) => onType({ [scopeField(scope)]: isChecked ? 'yes' : '' })}
          />
        ))}
      </div>
    </fieldset>
  );
};

const Fields = (props: FieldsProps) => (
  <>
    <TextField
      name="program-name"
      label={say('make.name')}
      hint={say('make.name-hint')}
      value={props.typed['program-name'] ?? ''}
      error={props.errorOf('program-name')}
      onChange={(event) => props.onType({ 'program-name': event.target.value })}
    />
    <Scopes {...props} />
    <RadioGroup
      name="program-days"
      legend={say('make.days')}
      options={tokenDays.map((value) => ({ value, label: say(`days.${value}`) }))}
      chosen={(props.typed['program-days'] as TokenDays | undefined) || null}
      error={props.errorOf('program-days')}
      onChoose={(days) => props.onType({ 'program-days': days })}
    />
  </>
);

export const MadeToken = ({ name, secret }: { readonly name: string; readonly secret: string }) => (
  <Notice title={say('made.title', { name })} isAnnounced>
    <p className="secret">{secret}</p>
    <p>{say('made.note')}</p>
  </Notice>
);

export const TokenForm = () => {
  const router = useRouter();
  const posted = usePosted(makeProgramToken.name);
  const asking = useAsking('program-name', posted);
  const [typed, setTyped] = useState<Typed>(posted?.typed ?? {});
  const [secret, setSecret] = useState<string | null>(null);
  const make = (event: FormEvent) => {
    event.preventDefault();
    const texts = Object.fromEntries(makeProgramToken.names({}).map((name) => [name, typed[name] ?? '']));
    const problems = makeProgramToken.missing(texts, {});
    if (problems.length > 0) return asking.t(problems);
    void asking.ask(
      () => change<{ secret: string }>(makeProgramToken.path, makeProgramToken.input(texts, {})),
      (made) => {
        setSecret(made.secret);
        router.refresh();
      },
    );
  };
  if (secret) return <MadeToken name={typed['program-name'] ?? ''} secret={secret} />;
  return (
    <PostedForm form={makeProgramToken.name} className="stack" onSubmit={make}>
      <Asked asking={asking} />
      <Fields
        typed={typed}
        errorOf={asking.errorOf}
        onType={(more) => setTyped((before) => ({ ...before, ...more }))}
      />
      <Button type="submit" aria-disabled={asking.isBusy || undefined}>
        {say('make')}
      </Button>
      <p role="status">{posted?.done}</p>
    </PostedForm>
  );
};
