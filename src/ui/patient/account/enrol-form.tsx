'use client';
/** A phone is set up: the code from the clinic, then a PIN of one's own. */
import { type FormEvent, useEffect, useState } from 'react';
import { goOnSignedIn } from '#ui/account/sign-in/saved-page.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import './words.ts';
import { postForm } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import { spokenOf } from '#ui/language/said.ts';
import { t } from '#ui/language/words.ts';
import { codeProblem, newPinProblem } from './typed-problems.ts';

const CodeStep = ({ onEnrolled }: { readonly onEnrolled: () => void }) => {
  const posted = usePosted('enrol-code');
  const asking = useAsking('code', posted);
  const [code, setCode] = useState(posted?.typed.code ?? '');
  useEffect(() => {
    // What the printed picture holds stands after "#", which is never sent to a server or kept in a log.
    const code = window.location.hash.slice(1);
    if (code === '') return;
    setCode(decodeURIComponent(code));
    window.history.replaceState(null, '', window.location.pathname);
  }, []);
  const send = (event: FormEvent) => {
    event.preventDefault();
    const wrong = codeProblem(code);
    if (wrong) return asking.t([spokenOf(wrong)]);
    void asking.ask(() => postForm('phone/accept', { code }), onEnrolled);
  };
  return (
    <PostedForm form="enrol-code" className="stack" onSubmit={send}>
      <ErrorSummary problems={asking.problems} />
      <PageHeading>{t('join.title')}</PageHeading>
      <TextField
        name="code"
        label={t('join.code')}
        hint={t('join.code-hint')}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        value={code}
        error={asking.errorOf('code')}
        onChange={(event) => setCode(event.target.value)}
      />
      <Button type="submit" isLarge aria-disabled={asking.isBusy || undefined}>
        {t('join.go')}
      </Button>
    </PostedForm>
  );
};

const PinField = (props: {
  readonly name: 'pin' | 'again';
  readonly value: string;
  readonly error: string | undefined;
  readonly onType: (text: string) => void;
}) => (
  <TextField
    name={props.name}
    type="password"
    inputMode="numeric"
    autoComplete="new-password"
    label={t(props.name === 'pin' ? 'join.pin' : 'join.again')}
    hint={props.name === 'pin' ? t('join.pin-hint') : undefined}
    maxLength={6}
    value={props.value}
    error={props.error}
    onChange={(event) => props.onType(event.target.value)}
  />
);

const PinStep = () => {
  const asking = useAsking('pin', usePosted('enrol-pin'));
  const [pin, setPin] = useState('');
  const [again, setAgain] = useState('');
  const send = (event: FormEvent) => {
    event.preventDefault();
    const wrong = newPinProblem(pin, again);
    if (wrong) return asking.t([spokenOf(wrong)]);
    void asking.ask(() => postForm('phone/choose-pin', { pin }), goOnSignedIn);
  };
  return (
    <PostedForm form="enrol-pin" className="stack" onSubmit={send}>
      <ErrorSummary problems={asking.problems} />
      <PageHeading>{t('join.pin-title')}</PageHeading>
      <p>{t('join.pin-why')}</p>
      <PinField name="pin" value={pin} error={asking.errorOf('pin')} onType={setPin} />
      <PinField name="again" value={again} error={asking.errorOf('again')} onType={setAgain} />
      <Button type="submit" isLarge aria-disabled={asking.isBusy || undefined}>
        {t('join.done')}
      </Button>
    </PostedForm>
  );
};

export const EnrolForm = ({ startsAtPin }: { readonly startsAtPin: boolean }) => {
  const [isEnrolled, setEnrolled] = useState(startsAtPin);
  return isEnrolled ? <PinStep /> : <CodeStep onEnrolled={() => setEnrolled(true)} />;
};
