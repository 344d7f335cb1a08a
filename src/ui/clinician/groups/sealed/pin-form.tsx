'use client';
/** The PIN that opens the sealed hour. */
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/groups/sealed.ts';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';

export interface PinFormProps {
  /** null = no wrong try yet. */
  readonly triesLeft: number | null;
  readonly onPin: (pin: string) => Promise<void>;
}

export const PinForm = ({ triesLeft, onPin }: PinFormProps) => {
  const [pin, setPin] = useState('');
  const [isBusy, setBusy] = useState(false);
  const open = async (event: FormEvent) => {
    event.preventDefault();
    if (isBusy || pin === '') return;
    setBusy(true);
    await onPin(pin);
    setPin('');
    setBusy(false);
  };
  return (
    <ScriptedForm className="stack-close" isQuiet onSubmit={(event) => void open(event)}>
      <TextField
        name="hour-pin"
        label={say('open.pin')}
        type="password"
        inputMode="numeric"
        autoComplete="off"
        value={pin}
        error={triesLeft === null ? undefined : say('open.wrong', { count: triesLeft })}
        onChange={(event) => setPin(event.target.value)}
      />
      <SendButton>{say(isBusy ? 'open.busy' : 'open.go')}</SendButton>
    </ScriptedForm>
  );
};
