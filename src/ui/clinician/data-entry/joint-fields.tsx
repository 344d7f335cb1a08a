/** The answers of one joint, each of which may stay open. */
import type { Joint } from '#core/exercises/joints.ts';
import { type JointQuestion, morningQuestions } from '#core/record/morning-questions.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/data-entry.ts';
import { boundField, type TypedForm } from '#ui/design-system/bound-field.ts';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { isAskedOnPaper, type Typed } from './answers.ts';

export interface FieldsProps extends TypedForm {
  readonly typed: Typed;
}

const openText = say('not-said');

const yesNo = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
];
export const scores = Array.from({ length: 11 }, (_, value) => ({
  value: String(value),
  label: String(value),
}));

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

/** The answer to one question of the morning check, in the way its kind is typed. */
const MorningAnswer = ({
  question: { id, answer, label, words = {} },
  joint,
  ...props
}: FieldsProps & { readonly question: JointQuestion; readonly joint: Joint }) => {
  const name = `${id}-${joint}`;
  if (answer.kind === 'flag') return <Choice {...props} name={name} label={label} />;
  if (answer.kind === 'enum') {
    const options = answer.values.map((value) => ({ value, label: words[value] ?? value }));
    return <Choice {...props} name={name} label={label} options={options} />;
  }
  return answer.unit === '{score}' ? (
    <Choice {...props} name={name} label={label} options={scores} />
  ) : (
    <NumberField {...boundField(props, name)} label={label} unit={answer.unit} isWhole isOptional />
  );
};

interface MorningJointProps extends FieldsProps {
  readonly joint: Joint;
  readonly swellingNotAsked: readonly Joint[];
}

export const MorningJoint = ({ joint, swellingNotAsked, ...props }: MorningJointProps) => (
  <fieldset className="field stack-close">
    <legend className="field-legend">{jointInWords(joint)}</legend>
    {morningQuestions
      .filter(({ id }) => isAskedOnPaper(id, joint, swellingNotAsked))
      .map((question) => (
        <MorningAnswer key={question.id} {...props} question={question} joint={joint} />
      ))}
  </fieldset>
);
