/** What exercises are searched by. A form that asks the page itself, so that it needs no script. */
import { muscles } from '#core/exercises/exercise.ts';
import { joints } from '#core/exercises/joints.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { Button } from '#ui/design-system/button.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { optionInWords } from '../../forms/field-words.ts';
import { type ChoiceAddress, regions } from './choice-address.ts';

const optionsOf = (values: readonly string[]) =>
  values.map((value) => ({ value, label: optionInWords(value) }));

const regionOptions = regions.map((value) => ({ value, label: say(`region.${value}`) }));

export const PickerForm = ({ patientId, at }: { readonly patientId: string; readonly at: ChoiceAddress }) => (
  <form method="get" action={`/patients/${patientId}/prescribe`} className="picker-form">
    <input type="hidden" name="find" value="1" />
    {(['method', 'line', 'side'] as const).map((name) =>
      at[name] ? <input key={name} type="hidden" name={name} value={at[name]} /> : null,
    )}
    {at.exerciseId ? <input type="hidden" name="exercise" value={at.exerciseId} /> : null}
    <TextField
      name="words"
      type="search"
      label={say('words')}
      defaultValue={at.words}
      maxLength={100}
      autoComplete="off"
    />
    <div className="picker-selects">
      <SelectField
        name="joint"
        label={say('joint')}
        empty={say('any')}
        options={optionsOf(joints)}
        defaultValue={at.joint ?? ''}
      />
      <SelectField
        name="region"
        label={say('region')}
        empty={say('any')}
        options={regionOptions}
        defaultValue={at.region ?? ''}
      />
      <SelectField
        name="trains"
        label={say('trains')}
        empty={say('any')}
        options={optionsOf(muscles)}
        defaultValue={at.trains ?? ''}
      />
    </div>
    <div className="picker-end">
      <label className="choice">
        <input type="checkbox" name="home" value="1" defaultChecked={at.isAtHome} />
        <span className="choice-text">{say('at-home')}</span>
      </label>
      <Button type="submit" tone="tint">
        {say('find')}
      </Button>
    </div>
  </form>
);
