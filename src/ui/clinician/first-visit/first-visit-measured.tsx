/** Numbers of a first visit: what the patient says of the joint, what was measured, and the first exercise. */
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/first-visit.ts';
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
        label={say('usual-pain-in-this-joint')}
        hint={say('usual-pain-meaning')}
        isWhole
        isOptional
      />
      <NumberField
        {...boundField(props, 'usual.acceptablePainLimit')}
        label={say('acceptable-pain-limit')}
        hint={proposed === null ? say('limit-not-proposed') : say('limit-proposed', { proposed })}
        isWhole
        isOptional
      />
      <NumberField
        {...boundField(props, 'usual.usualStiffnessMinutes')}
        label={say('usual-morning-stiffness')}
        unit="min"
        isWhole
        isOptional
      />
      <RadioGroup
        name="usual.usualSwelling"
        legend={say('usual-swelling-optional')}
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
    ? say('pressure-before', {
        'systolic-mmhg': last.systolicMmhg,
        'diastolic-mmhg': last.diastolicMmhg,
        on: dayInWords(last.day),
      })
    : say('no-pressure-before');
};

export const Measured = (props: PartProps) => (
  <div className="fields">
    <NumberField
      {...boundField(props, 'pressure.systolicMmhg')}
      label={say('resting-blood-pressure-upper')}
      hint={pressureBefore(props.page)}
      unit="mmHg"
      isWhole
      isOptional
    />
    <NumberField
      {...boundField(props, 'pressure.diastolicMmhg')}
      label={say('resting-blood-pressure-lower')}
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
    ? say('test-before', {
        repetitions: last.repetitions,
        'load-kg': last.loadKg,
        side: last.side,
        on: dayInWords(last.day),
      })
    : say('test-meaning');
};

export const Exercise = (props: PartProps) => {
  const template = props.page.templates.find((one) => one.id === props.typed.exerciseId);
  return (
    <div className="fields">
      <SelectField
        {...boundField(props, 'exerciseId')}
        label={say('begin-with')}
        options={props.page.templates.map(({ id, title }) => ({ value: id, label: title }))}
      />
      {template?.limbsAtOnce === 'both' ? null : (
        <RadioGroup
          name="request.side"
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
        label={say('test-load')}
        hint={testBefore(props)}
        unit="kg"
      />
      <NumberField
        {...boundField(props, 'test.repetitions')}
        label={say('test-repetitions-to-failure')}
        isWhole
      />
      <NumberField
        {...boundField(props, 'request.knownOneRepMaxKg')}
        label={say('known-one-repetition-maximum')}
        hint={say('used-only-if-no-test')}
        unit="kg"
        isOptional
      />
    </div>
  );
};
