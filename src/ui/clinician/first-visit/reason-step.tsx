'use client';
/** Why the patient comes: the diagnosis, the joints that are followed with their usual values, and the goal. */
import { errorGroups, errorGroupWords } from '#core/assessment/change/error-group.ts';
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import { type Joint, joints } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { optionInWords } from '#ui/clinician/forms/field-words.ts';
import { boundField } from '#ui/design-system/bound-field.ts';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { capital } from '../capital.ts';
import { followedIn, jointFields, notAsked } from './first-visit-state.ts';
import { SavedStep, type StepProps, type TypedParts, useStep } from './step-frame.tsx';

const jointOptions = joints.map((value) => ({ value, label: optionInWords(value) }));

const UsualSwelling = ({ name, ...parts }: TypedParts & { readonly name: string }) => (
  <RadioGroup
    name={name}
    legend={say('usual-swelling-optional')}
    isWrapped
    error={parts.errorOf(name)}
    options={[
      { value: 'none', label: 'None' },
      { value: 'slight', label: 'Slight' },
      { value: notAsked, label: say('swelling-not-asked') },
    ]}
    chosen={parts.typed[name] as 'none' | 'slight' | typeof notAsked | undefined}
    onChoose={(value) => parts.onType(name, value)}
  />
);

/** Answers of the patient about a joint that is followed, until a diary shows them. */
const UsualValues = ({
  joint,
  over,
  ...parts
}: TypedParts & { readonly joint: Joint; readonly over: number }) => {
  const at = (name: string) => `joints.${joint}.${name}`;
  const usual = readNumber(parts.typed[at('usualPain')] ?? '');
  const proposed = proposePainLimit(usual === null || Number.isNaN(usual) ? null : usual, over);
  return (
    <fieldset className="visit-group">
      <legend className="field-legend">
        {say('usual-of', { 'joint-name': capital(jointInWords(joint)) })}
      </legend>
      <div className="fields">
        <NumberField
          {...boundField(parts, at('usualPain'))}
          label={say('usual-pain-in-this-joint')}
          hint={say('usual-pain-meaning')}
          isWhole
          isOptional
        />
        <NumberField
          {...boundField(parts, at('acceptablePainLimit'))}
          label={say('acceptable-pain-limit')}
          hint={proposed === null ? say('limit-not-proposed') : say('limit-proposed', { proposed })}
          isWhole
          isOptional
        />
        <NumberField
          {...boundField(parts, at('usualStiffnessMinutes'))}
          label={say('usual-morning-stiffness')}
          hint={say('stiffness-meaning')}
          unit="min"
          isWhole
          isOptional
        />
        <UsualSwelling {...parts} name={at('usualSwelling')} />
      </div>
    </fieldset>
  );
};

const Goals = ({ goals, ...parts }: TypedParts & { readonly goals: readonly string[] }) => (
  <div className="stack-close">
    {goals.length > 0 ? (
      <p>
        {say('goals-so-far')} {goals.map((goal) => `“${goal}”`).join(' ')}
      </p>
    ) : null}
    <TextField
      {...boundField(parts, 'goal')}
      label={goals.length > 0 ? say('another-goal') : say('goal')}
      isOptional
      maxLength={300}
    />
  </div>
);

/** One more field as soon as the one before it is chosen, up to as many as are followed. */
const FollowedJoints = (parts: TypedParts) => {
  const { typed } = parts;
  const chosen = followedIn(typed);
  const shown = jointFields.filter(
    (name, place) => place < 2 || typed[name] || typed[jointFields[place - 1]!],
  );
  return (
    <>
      {shown.map((name) =>
        name === 'reason.followedJoints' ? (
          <SelectField
            key={name}
            {...boundField(parts, name)}
            label={say('joint-to-follow-every-day')}
            options={jointOptions}
          />
        ) : (
          <SelectField
            key={name}
            {...boundField(parts, name)}
            label={name === 'reason.secondJoint' ? say('second-joint') : say('another-joint')}
            empty={say('no-second-joint')}
            isOptional
            options={jointOptions.filter(({ value }) => value === typed[name] || !chosen.includes(value))}
          />
        ),
      )}
    </>
  );
};

/** Asked for with inflammatory arthritis, where tiredness speaks for the whole person. */
const AsksFatigue = (parts: TypedParts) => (
  <RadioGroup
    name="reason.asksFatigue"
    legend={say('asks-fatigue')}
    isWrapped
    error={parts.errorOf('reason.asksFatigue')}
    options={[
      { value: 'yes', label: 'Yes' },
      { value: 'no', label: 'No' },
    ]}
    chosen={parts.typed['reason.asksFatigue'] as 'yes' | 'no' | undefined}
    onChoose={(value) => parts.onType('reason.asksFatigue', value)}
  />
);

export const ReasonStep = (props: StepProps) => {
  const at = useStep(props);
  const { page } = props;
  const parts: TypedParts = { typed: at.typed, onType: at.onType, errorOf: at.submit.errorOf };
  return (
    <SavedStep {...props} at={at}>
      <div className="fields">
        <TextField {...boundField(parts, 'reason.diagnosis')} label="Diagnosis" maxLength={200} />
        <RadioGroup
          name="reason.inflammatoryArthritis"
          legend={say('inflammatory-arthritis')}
          isWrapped
          error={parts.errorOf('reason.inflammatoryArthritis')}
          options={[
            { value: 'yes', label: 'Yes' },
            { value: 'no', label: 'No' },
          ]}
          chosen={at.typed['reason.inflammatoryArthritis'] as 'yes' | 'no' | undefined}
          onChoose={(value) => at.onType('reason.inflammatoryArthritis', value)}
        />
        <FollowedJoints {...parts} />
        <SelectField
          {...boundField(parts, 'reason.errorGroup')}
          label={say('error-group')}
          empty={say('error-group-empty')}
          isOptional
          options={errorGroups.map((value) => ({ value, label: capital(errorGroupWords[value]) }))}
        />
        {at.typed['reason.inflammatoryArthritis'] === 'yes' || at.typed['reason.asksFatigue'] ? (
          <AsksFatigue {...parts} />
        ) : null}
      </div>
      {followedIn(at.typed).map((joint) => (
        <UsualValues key={joint} {...parts} joint={joint as Joint} over={page.painLimitOverUsual} />
      ))}
      <Goals {...parts} goals={page.goals} />
    </SavedStep>
  );
};
