/** Numbers of a first visit: what the patient says of the joint, what was measured, and the first exercise. */
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { boundField } from '#ui/design-system/bound-field.ts';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { SelectField } from '#ui/design-system/select-field.tsx';
import type { FirstVisitPage } from '../episode/answers.ts';
import type { PartProps } from './first-visit-parts.tsx';

/** Answers of the patient about the joint followed, until a diary shows them. */
export const UsualValues = (props: PartProps) => {
  const usual = readNumber(props.typed['usual.usualPain'] ?? '');
  const proposed = proposePainLimit(
    usual === null || Number.isNaN(usual) ? null : usual,
    props.page.painLimitOverUsual,
  );
  return (
    <div className="fields">
      <NumberField
        {...boundField(props, 'usual.usualPain')}
        label="Usual pain in this joint"
        hint="0 to 10, on an ordinary day, as the patient says."
        isWhole
        isOptional
      />
      <NumberField
        {...boundField(props, 'usual.acceptablePainLimit')}
        label="Acceptable pain limit"
        hint={
          proposed === null
            ? '5 to 7. A proposal appears once usual pain is entered.'
            : `5 to 7. Proposed from usual pain: ${proposed}.`
        }
        isWhole
        isOptional
      />
      <NumberField
        {...boundField(props, 'usual.usualStiffnessMinutes')}
        label="Usual morning stiffness"
        unit="min"
        isWhole
        isOptional
      />
      <RadioGroup
        name="usual.usualSwelling"
        legend="Usual swelling (optional)"
        isWrapped
        error={props.errorOf('usual.usualSwelling')}
        options={[
          { value: 'none', label: 'None' },
          { value: 'slight', label: 'Slight' },
        ]}
        chosen={props.typed['usual.usualSwelling'] as 'none' | 'slight' | undefined}
        onChoose={(value) => props.onType('usual.usualSwelling', value)}
      />
    </div>
  );
};

const lastOf = (page: FirstVisitPage, kind: string) =>
  page.measurements.filter((row) => row.kind === kind).at(-1);

const pressureBefore = (page: FirstVisitPage): string => {
  const last = lastOf(page, 'blood-pressure');
  return last?.kind === 'blood-pressure'
    ? `Before: ${last.systolicMmhg}/${last.diastolicMmhg} on ${dayInWords(last.day)}.`
    : 'None recorded. Without one, blood pressure is shown as not checked.';
};

export const Measured = (props: PartProps) => (
  <div className="fields">
    <NumberField
      {...boundField(props, 'pressure.systolicMmhg')}
      label="Resting blood pressure, upper"
      hint={pressureBefore(props.page)}
      unit="mmHg"
      isWhole
      isOptional
    />
    <NumberField
      {...boundField(props, 'pressure.diastolicMmhg')}
      label="Lower"
      hint="Seated."
      unit="mmHg"
      isWhole
      isOptional
    />
  </div>
);

const testBefore = ({ page, typed }: PartProps): string => {
  const exerciseId = page.templates.find((one) => one.id === typed.exerciseId)?.request.exerciseId;
  const last = page.measurements
    .filter((row) => row.kind === 'repetitions-to-failure' && row.exerciseId === exerciseId)
    .at(-1);
  return last?.kind === 'repetitions-to-failure'
    ? `Before: ${last.repetitions} with ${last.loadKg} kg (${last.side}) on ${dayInWords(last.day)}.`
    : 'Repetitions at one load until the patient cannot do another.';
};

export const Exercise = (props: PartProps) => {
  const template = props.page.templates.find((one) => one.id === props.typed.exerciseId);
  return (
    <div className="fields">
      <SelectField
        {...boundField(props, 'exerciseId')}
        label="Begin with"
        options={props.page.templates.map(({ id, title }) => ({ value: id, label: title }))}
      />
      {template?.limbsAtOnce === 'both' ? null : (
        <RadioGroup
          name="wish.side"
          legend="Side"
          isWrapped
          error={props.errorOf('request.side')}
          options={[
            { value: 'left', label: 'Left' },
            { value: 'right', label: 'Right' },
          ]}
          chosen={props.typed['request.side'] as 'left' | 'right' | undefined}
          onChoose={(value) => props.onType('request.side', value)}
        />
      )}
      <NumberField
        {...boundField(props, 'test.loadKg')}
        label="Test: load"
        hint={testBefore(props)}
        unit="kg"
      />
      <NumberField {...boundField(props, 'test.repetitions')} label="Test: repetitions to failure" isWhole />
      <NumberField
        {...boundField(props, 'request.knownOneRepMaxKg')}
        label="Known one-repetition maximum"
        hint="Used only if no test is entered."
        unit="kg"
        isOptional
      />
    </div>
  );
};
