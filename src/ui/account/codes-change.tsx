'use client';
/** Codes that are on: new recovery codes, or off again where the clinic lets each choose. */
import { useState } from 'react';
import { say } from '#messages/en/staff/account.ts';
import { Button } from '#ui/design-system/button.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from './asked.tsx';
import { postForm } from './call.ts';
import { RecoveryCodes } from './recovery-codes.tsx';
import { useAsking } from './use-asking.ts';

export const CodesChange = ({ mayStop }: { readonly mayStop: boolean }) => {
  const asking = useAsking('codes-passphrase');
  const [password, setPassword] = useState('');
  const [codes, setCodes] = useState<readonly string[] | null>(null);
  if (codes) return <RecoveryCodes codes={codes} />;
  const renew = () =>
    asking.ask(
      () => postForm<{ backupCodes: readonly string[] }>('two-factor/generate-backup-codes', { password }),
      (answer) => setCodes(answer.backupCodes),
    );
  const stop = () =>
    asking.ask(
      () => postForm('two-factor/disable', { password }),
      () => window.location.assign('/account'),
    );
  return (
    <div className="stack">
      <Asked asking={asking} />
      <p>{say('codes.replace')}</p>
      <TextField
        name="codes-passphrase"
        type="password"
        label="Passphrase"
        autoComplete="current-password"
        value={password}
        error={asking.problems[0]?.text}
        onChange={(event) => setPassword(event.target.value)}
      />
      <div className="row">
        <Button onClick={() => void renew()}>{say('codes.new')}</Button>
        {mayStop ? (
          <Button tone="stop" onClick={() => void stop()}>
            {say('codes.switch-off')}
          </Button>
        ) : null}
      </div>
    </div>
  );
};
