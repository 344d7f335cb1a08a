'use client';
/** One setting: its value, why, who changed it; and in place of the value, when it is changed, its field. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useEffect, useRef } from 'react';
import { checkSettings, isSwitch } from '#core/sources/clinic-setting.ts';
import { say } from '#messages/en/staff/administration/settings.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ScriptedForm } from '#ui/design-system/posted/scripted-form.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { systemMoment } from '../../account/system-moment.ts';
import { ChangePanel } from './change-panel.tsx';
import { fieldOf, type Setting, valueInWords } from './setting.ts';
import { type SettingRowProps, SettingValue } from './setting-value.tsx';
import { useSettingChange, type Wanted } from './use-setting-change.ts';

/** The number typed, with all that is wrong with it in words. */
const readDraft = (setting: Setting, text: string): Wanted => {
  const field = fieldOf(setting.id);
  const value = readNumber(text);
  const seen = { [setting.id]: setting.value };
  if (value === null || Number.isNaN(value))
    return { values: {}, seen, problems: [{ field, text: say('no-number') }] };
  const values = { [setting.id]: value };
  const problems = checkSettings([setting], values).map(({ reason }) => ({ field, text: reason }));
  const isSame = value === setting.value ? [{ field, text: say('no-change') }] : [];
  return { values, seen, problems: [...problems, ...isSame] };
};

const typedInWords = (setting: Setting, text: string): string => {
  const value = readNumber(text);
  return value === null || Number.isNaN(value) ? text : valueInWords(setting, value);
};

const History = ({ setting, zone }: Pick<SettingRowProps, 'setting' | 'zone'>) =>
  setting.history.length === 0 ? null : (
    <Disclosure summary={say('history', { count: setting.history.length })}>
      <ul className="plain-list small">
        {setting.history.map((one) => (
          <li key={one.at}>
            {say('history.line', {
              before: valueInWords(setting, one.before),
              after: valueInWords(setting, one.after),
              by: one.by,
              at: systemMoment(one.at, zone),
            })}{' '}
            <q>{one.reason}</q>
          </li>
        ))}
      </ul>
    </Disclosure>
  );

const Facts = ({ setting }: Pick<SettingRowProps, 'setting'>) => {
  const usual = valueInWords(setting, setting.default);
  const { min, max } = setting;
  return (
    <p className="soft small" id={`about-${setting.id}`}>
      {isSwitch(setting) ? say('switch.usual', { usual }) : say('bounds', { min, max, usual })}
      {setting.value === setting.default ? '' : ` ${say('own')}`}
    </p>
  );
};

const Beside = ({ setting, mayChange, draft, onDraft }: SettingRowProps) => {
  if (draft)
    return <span className="soft">{say('was', { value: valueInWords(setting, setting.value) })}</span>;
  if (!mayChange || isSwitch(setting)) return null;
  return (
    <Button
      tone="quiet"
      id={`change-${setting.id}`}
      onClick={() => onDraft({ text: String(setting.value), reason: '' })}
    >
      {say('change')}
      <span className="visually-hidden">: {setting.title}</span>
    </Button>
  );
};

/** The field takes the focus when it comes, and the button gets it back. */
const useFocus = (setting: Setting, isOpen: boolean) => {
  const wasOpen = useRef(isOpen);
  useEffect(() => {
    if (wasOpen.current === isOpen) return;
    wasOpen.current = isOpen;
    if (isSwitch(setting)) return document.getElementById(fieldOf(setting.id))?.focus();
    document.getElementById(isOpen ? fieldOf(setting.id) : `change-${setting.id}`)?.focus();
  }, [isOpen, setting]);
};

const Panel = (props: SettingRowProps & { readonly changing: ReturnType<typeof useSettingChange> }) => {
  const { setting, draft, onDraft, changing } = props;
  if (!draft) return null;
  const usual = String(setting.default);
  return (
    <ChangePanel
      id={setting.id}
      changing={changing}
      isReplayed={setting.isOfDecisions}
      reason={draft.reason}
      onReason={(reason) => onDraft({ ...draft, reason })}
      saveLabel={say('save', { value: typedInWords(setting, draft.text) })}
      keepLabel={say('keep', { value: valueInWords(setting, setting.value) })}
      onKeep={() => {
        changing.forget();
        onDraft(null);
      }}
    >
      {setting.value !== setting.default && draft.text !== usual && !isSwitch(setting) ? (
        <Button tone="quiet" onClick={() => onDraft({ ...draft, text: usual })}>
          {say('back', { usual: valueInWords(setting, setting.default) })}
        </Button>
      ) : null}
    </ChangePanel>
  );
};

export const SettingRow = (props: SettingRowProps) => {
  const { setting, draft, zone, isSaved } = props;
  const router = useRouter();
  const wanted = readDraft(setting, draft?.text ?? '');
  const changing = useSettingChange(setting.id, wanted, setting.isOfDecisions);
  useFocus(setting, draft !== null);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!draft) return;
    if (setting.isOfDecisions && !changing.preview) return changing.look();
    changing.save(
      draft.reason,
      () => {
        props.onSaved();
        router.refresh();
      },
      () => router.refresh(),
    );
  };
  const { id } = setting;
  return (
    <li className={draft ? 'setting setting-open' : 'setting'} id={`setting-${id}`}>
      <ScriptedForm isQuiet onSubmit={submit}>
        <div className="setting-head">
          <div>
            <h3 id={`title-${id}`}>{setting.title}</h3>
            <Facts setting={setting} />
          </div>
          <div>
            <SettingValue {...props} error={changing.asking.errorOf(fieldOf(id))} />
            <span role="status">
              {isSaved ? say('saved', { value: valueInWords(setting, setting.value) }) : ''}
            </span>
          </div>
          <p className="soft small">{setting.why}</p>
          <div className="setting-beside">
            <Beside {...props} />
          </div>
        </div>
        <Panel {...props} changing={changing} />
      </ScriptedForm>
      <History setting={setting} zone={zone} />
    </li>
  );
};
