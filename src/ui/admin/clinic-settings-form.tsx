'use client';
/** The clinic's own numbers: changed together, looked at before they are kept, kept with a reason. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { unitWords } from '#api/inputs/unit-words.ts';
import type { ClinicSetting } from '#core/sources/clinic-setting.ts';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';
import { type Preview, SettingPreview } from './settings-preview.tsx';
import { Version3Part } from './version-3-part.tsx';

export interface ClinicSettingsFormProps {
  readonly areas: readonly {
    readonly id: string;
    readonly title: string;
    readonly settings: readonly (ClinicSetting & { readonly value: number })[];
  }[];
  readonly mayChange: boolean;
}

type Setting = ClinicSettingsFormProps['areas'][number]['settings'][number];

const isYesNo = ({ min, max, whole }: ClinicSetting): boolean => whole === true && min === 0 && max === 1;

interface SettingRowProps {
  readonly setting: Setting;
  readonly text: string;
  readonly error: string | undefined;
  readonly onType: (text: string) => void;
}

const SettingRow = ({ setting, text, error, onType }: SettingRowProps) => {
  const { id, title, min, max, unit, why } = setting;
  return (
    <div className="choice-row" id={`row-${id}`}>
      <div>
        {isYesNo(setting) ? (
          <RadioGroup
            name={id}
            legend={title}
            isWrapped
            options={[
              { value: '0', label: '0' },
              { value: '1', label: '1' },
            ]}
            chosen={text === '1' ? '1' : '0'}
            onChoose={onType}
          />
        ) : (
          <NumberField
            name={id}
            label={title}
            hint={say('setting.bounds', { min, max, usual: setting.default })}
            unit={unitWords(unit) || undefined}
            isWhole={setting.whole}
            value={text}
            error={error}
            onChange={(event) => onType(event.target.value)}
          />
        )}
      </div>
      <p className="soft">{why}</p>
    </div>
  );
};

const startOf = (areas: ClinicSettingsFormProps['areas']): Readonly<Record<string, string>> =>
  Object.fromEntries(
    areas.flatMap((area) => area.settings).map((setting) => [setting.id, String(setting.value)]),
  );

interface AreasProps extends ClinicSettingsFormProps {
  readonly typed: Readonly<Record<string, string>>;
  readonly errorOf: (field: string) => string | undefined;
  readonly onType: (values: Readonly<Record<string, string>>) => void;
}

const deliveredIn = (area: ClinicSettingsFormProps['areas'][number]): Readonly<Record<string, number>> =>
  Object.fromEntries(area.settings.map((setting) => [setting.id, setting.default]));

const SettingAreas = ({ areas, mayChange, typed, errorOf, onType }: AreasProps) => (
  <>
    {areas.map((area) => (
      <fieldset key={area.id} disabled={!mayChange} className="fields-group">
        <legend className="field-legend">{area.title}</legend>
        {area.id === 'engine' ? (
          <Version3Part typed={typed} delivered={deliveredIn(area)} onFill={onType} />
        ) : null}
        {area.settings.map((setting) => (
          <SettingRow
            key={setting.id}
            setting={setting}
            text={typed[setting.id] ?? ''}
            error={errorOf(setting.id) ?? errorOf(`choices.${setting.id}`)}
            onType={(text) => onType({ [setting.id]: text })}
          />
        ))}
      </fieldset>
    ))}
  </>
);

interface SaveProps {
  readonly preview: Preview;
  readonly reason: string;
  readonly error: string | undefined;
  readonly onReason: (text: string) => void;
  readonly onSave: () => void;
}

const SavePart = ({ preview, reason, error, onReason, onSave }: SaveProps) => (
  <section className="stack">
    <SettingPreview preview={preview} />
    <LongTextField
      name="reason"
      label={say('reason')}
      maxLength={500}
      value={reason}
      error={error}
      onChange={(event) => onReason(event.target.value)}
    />
    <Button onClick={onSave}>{say('settings.save')}</Button>
  </section>
);

/** Numbers as typed; what is no number is named and nothing is sent. */
const readAll = (typed: Readonly<Record<string, string>>) => {
  const read = Object.entries(typed).map(([id, text]) => [id, readNumber(text)] as const);
  const problems = read
    .filter(([, value]) => value === null || Number.isNaN(value))
    .map(([field]) => ({ field, text: say('no-number') }));
  return { values: Object.fromEntries(read) as Record<string, number>, problems };
};

export const ClinicSettingsForm = ({ areas, mayChange }: ClinicSettingsFormProps) => {
  const router = useRouter();
  const asking = useAsking('reason');
  const [typed, setTyped] = useState(startOf(areas));
  const [reason, setReason] = useState('');
  const [preview, setPreview] = useState<Preview | null>(null);
  const [isSaved, setSaved] = useState(false);
  const type = (values: Readonly<Record<string, string>>) => {
    setPreview(null);
    setSaved(false);
    setTyped({ ...typed, ...values });
  };
  const look = (event: FormEvent) => {
    event.preventDefault();
    const { values, problems } = readAll(typed);
    if (problems.length > 0) return asking.t(problems);
    void asking.ask(() => change<Preview>('admin.clinicSettings.preview', { values }), setPreview);
  };
  const saved = () => {
    setPreview(null);
    setReason('');
    setSaved(true);
    router.refresh();
  };
  const save = () => {
    const missing = [{ field: 'reason', text: say('no-reason') }];
    if (reason.trim().length < 3) return asking.t(missing);
    void asking.ask(
      () => change('admin.clinicSettings.save', { values: readAll(typed).values, reason }),
      saved,
    );
  };
  const error = asking.errorOf('reason');
  return (
    <form method="post" className="stack-wide" noValidate onSubmit={look}>
      <Asked asking={asking} />
      <SettingAreas
        areas={areas}
        mayChange={mayChange}
        typed={typed}
        errorOf={asking.errorOf}
        onType={type}
      />
      {preview ? <SavePart {...{ preview, reason, error }} onReason={setReason} onSave={save} /> : null}
      {mayChange && !preview ? <Button type="submit">{say('preview')}</Button> : null}
      <span role="status">{isSaved ? say('settings.saved') : ''}</span>
    </form>
  );
};
