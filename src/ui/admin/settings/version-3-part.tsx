'use client';
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { version3 } from '#core/decision/version-3-settings.ts';
import { say as settings } from '#messages/en/staff/administration/settings.ts';
import { say } from '#messages/en/staff/administration.ts';
/** The settings called version 3, saved together: what they do, and that they were tried on invented people alone. */
import { ScriptedForm } from '#ui/design-system/posted/scripted-form.tsx';
import { ChangePanel } from './change-panel.tsx';
import type { Setting } from './setting.ts';
import { useSettingChange, type Wanted } from './use-setting-change.ts';

const ids = Object.keys(version3);

/** Values by id: the whole set, or as delivered where the whole set is in force; no other setting is touched. */
export const version3Change = (all: readonly Pick<Setting, 'id' | 'value' | 'default'>[]) => {
  const own = all.filter(({ id }) => ids.includes(id));
  const isInForce = own.every(({ id, value }) => version3[id] === value);
  const wanted: Wanted = {
    values: Object.fromEntries(own.map((one) => [one.id, isInForce ? one.default : version3[one.id]!])),
    seen: Object.fromEntries(own.map(({ id, value }) => [id, value])),
    problems: [],
  };
  return { isInForce, wanted };
};

interface Version3Props {
  readonly all: readonly Setting[];
  readonly mayChange: boolean;
}

const Facts = ({ isInForce }: { readonly isInForce: boolean }) => (
  <>
    <p>
      {say('version-3.title')} {isInForce ? say('version-3.in-force') : say('version-3.not-in-force')}
    </p>
    <ul>
      <li>{say('version-3.swap')}</li>
      <li>{say('version-3.step')}</li>
      <li>{say('version-3.twice')}</li>
      <li>{say('version-3.flare')}</li>
      <li>{say('version-3.cut')}</li>
    </ul>
    <p>{say('version-3.invented')}</p>
  </>
);

export const Version3Part = ({ all, mayChange }: Version3Props) => {
  const router = useRouter();
  const { isInForce, wanted } = version3Change(all);
  const changing = useSettingChange('version-3', wanted, true);
  const [reason, setReason] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!changing.preview) return changing.look();
    changing.save(
      reason,
      () => {
        setReason('');
        router.refresh();
      },
      () => router.refresh(),
    );
  };
  return (
    <ScriptedForm className="version-3 stack-close" onSubmit={submit}>
      <Facts isInForce={isInForce} />
      {mayChange ? (
        <ChangePanel
          id="version-3"
          changing={changing}
          isReplayed
          reason={reason}
          onReason={setReason}
          saveLabel={settings(isInForce ? 'version-3.back' : 'version-3.save')}
          keepLabel={settings('version-3.leave')}
          onKeep={changing.preview ? changing.forget : null}
        />
      ) : null}
    </ScriptedForm>
  );
};
