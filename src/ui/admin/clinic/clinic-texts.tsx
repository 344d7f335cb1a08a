'use client';
/** Name and numbers of the clinic, one line each, changed in place and saved by themselves. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import type { ClinicText } from '#core/clinic/clinic-details.ts';
import { say } from '#messages/en/staff/administration/clinic.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../../account/asked.tsx';
import { useAsking } from '../../account/use-asking.ts';
import { changeOrConflict } from '../change-or-conflict.ts';
import { DetailHistory, type DetailHistoryProps } from './detail-history.tsx';

export interface ClinicTextsProps {
  readonly texts: Readonly<Record<ClinicText, string | null>>;
  readonly history: Readonly<Record<ClinicText, DetailHistoryProps['changes']>>;
  readonly zone: string;
}

interface TextProps extends Omit<ClinicTextsProps, 'history'> {
  readonly detail: ClinicText;
  readonly changes: DetailHistoryProps['changes'];
}

interface FormProps extends TextProps {
  readonly onDone: (isSaved: boolean) => void;
}

const TextForm = ({ detail, texts, onDone }: FormProps) => {
  const router = useRouter();
  const asking = useAsking(detail);
  const [value, setValue] = useState(texts[detail] ?? '');
  const save = (event: FormEvent) => {
    event.preventDefault();
    const entry = { detail, value, seen: texts[detail] };
    void asking.ask(
      () => changeOrConflict('admin.clinicDetails.enter', entry, () => router.refresh()),
      () => {
        onDone(true);
        router.refresh();
      },
    );
  };
  return (
    <ScriptedForm className="stack-close" onSubmit={save}>
      <Asked asking={asking} />
      <TextField
        name={detail}
        label={say(detail)}
        hint={say(`hint.${detail}`)}
        type={detail === 'name' ? 'text' : 'tel'}
        maxLength={200}
        autoComplete="off"
        value={value}
        error={asking.errorOf(detail)}
        onChange={(event) => setValue(event.target.value)}
      />
      <div className="row">
        <SendButton aria-disabled={asking.isBusy || undefined}>
          {say('save', { what: say(detail).toLowerCase() })}
        </SendButton>
        <Button tone="plain" onClick={() => onDone(false)}>
          {say('keep')}
        </Button>
      </div>
    </ScriptedForm>
  );
};

const Line = (props: TextProps & { readonly onChange: () => void; readonly isSaved: boolean }) => {
  const { detail, texts, isSaved } = props;
  const value = texts[detail];
  return (
    <div className="detail-line">
      <h3>{say(detail)}</h3>
      <p>
        {value ?? say('urgent-number.none', { emergency: texts['emergency-number'] ?? '' })}{' '}
        <span role="status">{isSaved ? say('saved') : ''}</span>
      </p>
      <Button tone="quiet" id={`change-${detail}`} onClick={props.onChange}>
        {say(value === null ? 'enter' : 'change')}
        <span className="visually-hidden">: {say(detail)}</span>
      </Button>
    </div>
  );
};

const ClinicTextLine = (props: TextProps) => {
  const { detail } = props;
  const [state, setState] = useState<'shown' | 'changing' | 'saved'>('shown');
  const before = useRef(state);
  useEffect(() => {
    if (before.current === state) return;
    before.current = state;
    document.getElementById(state === 'changing' ? detail : `change-${detail}`)?.focus();
  }, [state, detail]);
  return (
    <li className="detail">
      {state === 'changing' ? (
        <TextForm {...props} onDone={(isSaved) => setState(isSaved ? 'saved' : 'shown')} />
      ) : (
        <Line {...props} isSaved={state === 'saved'} onChange={() => setState('changing')} />
      )}
      <DetailHistory changes={props.changes} zone={props.zone} />
    </li>
  );
};

const order: readonly ClinicText[] = ['name', 'phone', 'urgent-number', 'emergency-number'];

export const ClinicTexts = ({ history, ...rest }: ClinicTextsProps) => (
  <section className="stack-close" id="clinic">
    <h2>{say('title')}</h2>
    <p className="soft">{say('lead')}</p>
    <ul className="plain-list">
      {order.map((detail) => (
        <ClinicTextLine key={detail} {...rest} detail={detail} changes={history[detail]} />
      ))}
    </ul>
    <p className="soft small">{say('zone', { zone: rest.zone })}</p>
  </section>
);
