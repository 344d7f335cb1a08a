/** The fields that both looks back share: a setting of the rules with a value to try, and how many weeks. */
import { say } from '#messages/en/staff/review/what-if.ts';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import type { ReplaySettings } from '../answers.ts';
import type { Typed } from './asked.ts';

interface FieldsProps {
  readonly settings: ReplaySettings;
  readonly typed: Typed;
}

export const SettingFields = ({ settings, typed }: FieldsProps) => (
  <fieldset className="stack-close">
    <legend>{say('of-clinic')}</legend>
    <SelectField
      name="setting"
      label={say('setting')}
      hint={say('dose-left-out')}
      defaultValue={typed.setting ?? ''}
      options={settings.map(({ id, title, value }) => ({
        value: id,
        label: say('setting.now', { title, value }),
      }))}
    />
    <NumberField name="value" label={say('value')} defaultValue={typed.value} />
  </fieldset>
);

export const WeeksField = ({ typed }: Pick<FieldsProps, 'typed'>) => (
  <NumberField name="weeks" label={say('weeks')} isWhole defaultValue={typed.weeks ?? '12'} />
);
