'use client';
/** Opens an enrolled phone. */
import { type FormEvent, useState } from 'react';
import { goOnSignedIn } from '#ui/account/sign-in/saved-page.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import './words.ts';
import { type Answer, postForm } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import { spokenOf } from '#ui/language/said.ts';
import { t } from '#ui/language/words.ts';
import { pinProblem } from './typed-problems.ts';

const Spent = () => (
  <div className="stack">
    <PageHeading>{t('pin.spent')}</PageHeading>
    <p>{t('pin.spent-text')}</p>
    <LinkButton href="/enrol" isLarge>
      {t('pin.new-code')}
    </LinkButton>
  </div>
);

export const PinForm = ({ isSpent }: { readonly isSpent: boolean }) => {
  const asking = useAsking('pin', usePosted('pin'));
  const [pin, setPin] = useState('');
  const [hasSpent, setSpent] = useState(isSpent);
  const send = (event: FormEvent) => {
    event.preventDefault();
    const wrong = pinProblem(pin);
    if (wrong) return asking.t([spokenOf(wrong)]);
    const postOnce = async (): Promise<Answer<unknown>> => {
      const answer = await postForm('phone/sign-in', { pin });
      setPin('');
      if (!answer.ok && answer.problem === 'too-many-tries') setSpent(true);
      return answer;
    };
    void asking.ask(postOnce, goOnSignedIn);
  };
  if (hasSpent) return <Spent />;
  return (
    <PostedForm form="pin" className="stack" onSubmit={send}>
      <ErrorSummary problems={asking.problems} />
      <PageHeading>{t('pin.title')}</PageHeading>
      <TextField
        name="pin"
        type="password"
        inputMode="numeric"
        autoComplete="current-password"
        label={t('pin.label')}
        hint={t('pin.hint')}
        maxLength={6}
        value={pin}
        error={asking.errorOf('pin')}
        onChange={(event) => setPin(event.target.value)}
      />
      <Button type="submit" isLarge aria-disabled={asking.isBusy || undefined}>
        {t('pin.go')}
      </Button>
      <p className="soft">{t('pin.forgotten')}</p>
      <p className="row">
        <a href="/enrol">{t('pin.new-code')}</a>
        <a href="/sign-in?with=passphrase">{t('pin.passphrase')}</a>
      </p>
    </PostedForm>
  );
};
