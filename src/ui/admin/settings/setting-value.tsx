'use client';
/** The value of a setting in its row: words, the field while it is changed, or a switch. */
import { unitWords } from '#api/inputs/unit-words.ts';
import { isSwitch } from '#core/sources/clinic-setting.ts';
import { say } from '#messages/en/staff/administration/settings.ts';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { fieldOf, type Setting, valueInWords } from './setting.ts';
import { SettingSwitch } from './setting-switch.tsx';

/** What is typed for one setting and not saved yet. */
export interface SettingDraft {
  readonly text: string;
  readonly reason: string;
}

export interface SettingRowProps {
  readonly setting: Setting;
  readonly mayChange: boolean;
  readonly zone: string;
  /** Null while nothing is being changed. */
  readonly draft: SettingDraft | null;
  readonly isSaved: boolean;
  readonly onDraft: (draft: SettingDraft | null) => void;
  readonly onSaved: () => void;
}

interface ValueProps extends SettingRowProps {
  readonly error: string | undefined;
}

export const SettingValue = ({ setting, mayChange, draft, error, onDraft }: ValueProps) => {
  const { id } = setting;
  const type = (text: string) => onDraft({ text, reason: draft?.reason ?? '' });
  if (isSwitch(setting) && mayChange) {
    const isOn = draft ? draft.text === '1' : setting.value === 1;
    // Back to the value in force, there is nothing left to save.
    const onSwitch = () =>
      (isOn ? 0 : 1) === setting.value && !draft?.reason ? onDraft(null) : type(isOn ? '0' : '1');
    return (
      <SettingSwitch
        id={fieldOf(id)}
        isOn={isOn}
        labelledBy={`title-${id}`}
        describedBy={`about-${id}`}
        onSwitch={onSwitch}
      />
    );
  }
  if (!draft) return <strong className="setting-value">{valueInWords(setting, setting.value)}</strong>;
  return (
    <NumberField
      name={fieldOf(id)}
      label={
        <>
          <span className="visually-hidden">{setting.title}: </span>
          {say('new-value')}
        </>
      }
      unit={unitWords(setting.unit) || undefined}
      isWhole={setting.whole}
      value={draft.text}
      error={error}
      onChange={(event) => type(event.target.value)}
    />
  );
};
