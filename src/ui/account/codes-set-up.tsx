'use client';
/** One-time codes switched on in three steps: passphrase, app, recovery codes on paper. */
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/account.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from './asked.tsx';
import { postForm } from './call.ts';
import { QrCode } from './qr-code.tsx';
import { RecoveryCodes } from './recovery-codes.tsx';
import { type Asking, useAsking } from './use-asking.ts';

interface Begun {
  readonly totpURI: string;
  readonly backupCodes: readonly string[];
}

/** In groups of four, as it is typed by hand. */
const typedSecret = (uri: string): string =>
  (new URL(uri).searchParams.get('secret') ?? '').replace(/(.{4})/g, '$1 ').trim();

const Begin = ({
  asking,
  onBegun,
}: {
  readonly asking: Asking;
  readonly onBegun: (begun: Begun) => void;
}) => {
  const [password, setPassword] = useState('');
  const begin = (event: FormEvent) => {
    event.preventDefault();
    void asking.ask(() => postForm<Begun>('two-factor/enable', { password }), onBegun);
  };
  return (
    <ScriptedForm className="stack" onSubmit={begin}>
      <p>{say('codes.about')}</p>
      <TextField
        name="codes-passphrase"
        type="password"
        label="Passphrase"
        autoComplete="current-password"
        value={password}
        onChange={(event) => setPassword(event.target.value)}
      />
      <SendButton>Begin</SendButton>
    </ScriptedForm>
  );
};

const Scan = ({
  asking,
  begun,
  onDone,
}: {
  readonly asking: Asking;
  readonly begun: Begun;
  readonly onDone: () => void;
}) => {
  const [code, setCode] = useState('');
  const verify = (event: FormEvent) => {
    event.preventDefault();
    void asking.ask(() => postForm('two-factor/verify-totp', { code: code.replace(/\s/g, '') }), onDone);
  };
  return (
    <ScriptedForm className="stack" onSubmit={verify}>
      <h2>{say('app.add')}</h2>
      <QrCode text={begun.totpURI} label={say('app.scan')} />
      <p>
        {say('app.secret')} <span className="secret">{typedSecret(begun.totpURI)}</span>
      </p>
      <TextField
        name="codes-first"
        label={say('app.code')}
        hint={say('app.code-hint')}
        inputMode="numeric"
        autoComplete="one-time-code"
        value={code}
        error={asking.problems[0]?.text}
        onChange={(event) => setCode(event.target.value)}
      />
      <SendButton>{say('codes.switch-on')}</SendButton>
    </ScriptedForm>
  );
};

export const CodesSetUp = () => {
  const asking = useAsking('codes-passphrase');
  const [begun, setBegun] = useState<Begun | null>(null);
  const [isDone, setDone] = useState(false);
  if (begun && isDone) {
    return (
      <div className="stack">
        <Notice title={say('codes.are-on')} isAnnounced />
        <RecoveryCodes codes={begun.backupCodes} />
      </div>
    );
  }
  return (
    <div className="stack">
      <Asked asking={asking} />
      {begun ? (
        <Scan asking={asking} begun={begun} onDone={() => setDone(true)} />
      ) : (
        <Begin asking={asking} onBegun={setBegun} />
      )}
    </div>
  );
};
