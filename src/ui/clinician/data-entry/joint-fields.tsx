/** The answers of one joint, each of which may stay open. */
import type { Joint } from '#core/exercises/joints.ts';
import { swellings } from '#core/record/record.ts';
import { jointInWords, swellingInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/data-entry.ts';
import { boundField, type TypedForm } from '#ui/design-system/bound-field.ts';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import type { Typed } from './answers.ts';

export interface FieldsProps extends TypedForm {
  readonly typed: Typed;
}

const openText = say('not-said');

const yesNo = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
];
const scores = Array.from({ length: 11 }, (_, value) => ({ value: String(value), label: String(value) }));

export interface ChoiceProps extends FieldsProps {
  readonly name: string;
  readonly label: string;
  readonly options?: readonly { readonly value: string; readonly label: string }[];
}

export const Choice = ({ name, label, options = yesNo, ...form }: ChoiceProps) => (
  <SelectField {...boundField(form, name)} label={label} empty={openText} options={options} />
);

export const SessionJoint = ({ joint, ...props }: FieldsProps & { readonly joint: Joint }) => (
  <fieldset className="field stack-close">
    <legend className="field-legend">{jointInWords(joint)}</legend>
    <Choice {...props} name={`before-${joint}`} label={say('pain-before')} options={scores} />
    <Choice {...props} name={`during-${joint}`} label={say('worst-pain')} options={scores} />
    <Choice {...props} name={`after-${joint}`} label={say('pain-after')} options={scores} />
    <Choice {...props} name={`gave-way-${joint}`} label={say('gave-way')} />
  </fieldset>
);

interface MorningJointProps extends FieldsProps {
  readonly joint: Joint;
  readonly asksSwelling: boolean;
}

export const MorningJoint = ({ joint, asksSwelling, ...props }: MorningJointProps) => {
  return (
    <fieldset className="field stack-close">
      <legend className="field-legend">{jointInWords(joint)}</legend>
      <Choice {...props} name={`pain-${joint}`} label={say('pain-in-the-morning')} options={scores} />
      <NumberField
        {...boundField(props, `stiffness-${joint}`)}
        label={say('stiff-for')}
        unit="min"
        isWhole
        isOptional
      />
      {asksSwelling ? (
        <Choice
          {...props}
          name={`swelling-${joint}`}
          label={say('more-swollen-than-usual')}
          options={swellings.map((value) => ({
            value,
            label: swellingInWords(value, 'more-than-usual'),
          }))}
        />
      ) : null}
      <Choice {...props} name={`flare-${joint}`} label="Flare" />
    </fieldset>
  );
};
