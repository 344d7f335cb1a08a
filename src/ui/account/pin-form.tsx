'use client';
/** Opens an enrolled phone. */
import { type FormEvent, useState } from 'react';
import { Button, LinkButton } from '#ui/shared/button.tsx';
import { ErrorSummary } from '#ui/shared/error-summary.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { goOnSignedIn } from '#ui/shared/sign-in/kept-page.ts';
import { TextField } from '#ui/shared/text-field.tsx';
import '#ui/words/account.ts';
import { say } from '#ui/words.ts';
import { type Answer, knock } from './call.ts';
import { useAsking } from './use-asking.ts';

const Spent = () => (
  <div className="stack">
    <PageHeading>{say('pin.spent')}</PageHeading>
    <p>{say('pin.spent-text')}</p>
    <LinkButton href="/join" isLarge>
      {say('pin.new-code')}
    </LinkButton>
  </div>
);

export const PinForm = ({ isSpent }: { readonly isSpent: boolean }) => {
  const asking = useAsking('pin');
  const [pin, setPin] = useState('');
  const [hasSpent, setSpent] = useState(isSpent);
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (!/^\d{6}$/.test(pin)) return asking.say([{ field: 'pin', text: say('join.pin-shape') }]);
    const knockOnce = async (): Promise<Answer<unknown>> => {
      const answer = await knock('phone/sign-in', { pin });
      setPin('');
      if (!answer.ok && answer.problem === 'too-many-tries') setSpent(true);
      return answer;
    };
    void asking.ask(knockOnce, goOnSignedIn);
  };
  if (hasSpent) return <Spent />;
  return (
    <form method="post" className="stack" noValidate onSubmit={send}>
      <ErrorSummary problems={asking.problems} />
      <PageHeading>{say('pin.title')}</PageHeading>
      <TextField
        name="pin"
        type="password"
        inputMode="numeric"
        autoComplete="current-password"
        label={say('pin.label')}
        hint={say('pin.hint')}
        maxLength={6}
        value={pin}
        error={asking.errorOf('pin')}
        onChange={(event) => setPin(event.target.value)}
      />
      <Button type="submit" isLarge aria-disabled={asking.isBusy || undefined}>
        {say('pin.go')}
      </Button>
      <p className="soft">{say('pin.forgotten')}</p>
      <p className="row">
        <a href="/join">{say('pin.new-code')}</a>
        <a href="/sign-in">{say('pin.passphrase')}</a>
      </p>
    </form>
  );
};
