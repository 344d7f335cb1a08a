'use client';
/** Blood pressure, and what the body formulas ask for; what is on record stands beside each field. */
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { boundField } from '#ui/design-system/bound-field.ts';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import type { FirstVisitPage } from '../episode/answers.ts';
import { SavedStep, type StepProps, type TypedParts, useStep } from './step-frame.tsx';

type Kind = FirstVisitPage['measurements'][number]['kind'];

const lastOf = <K extends Kind>({ measurements }: FirstVisitPage, kind: K) =>
  measurements.findLast((row): row is Extract<typeof row, { readonly kind: K }> => row.kind === kind);

const pressureBefore = (page: FirstVisitPage): string => {
  const last = lastOf(page, 'blood-pressure');
  return last
    ? say('pressure-before', {
        'systolic-mmhg': last.systolicMmhg,
        'diastolic-mmhg': last.diastolicMmhg,
        on: dayInWords(last.day),
      })
    : say('no-pressure-before');
};

const massBefore = (page: FirstVisitPage): string | undefined => {
  const last = lastOf(page, 'body-mass');
  return last && say('mass-before', { 'mass-kg': last.massKg, on: dayInWords(last.day) });
};

const statureBefore = (page: FirstVisitPage): string | undefined => {
  const last = lastOf(page, 'stature');
  return last && say('stature-before', { 'stature-cm': last.statureCm, on: dayInWords(last.day) });
};

type Parts = TypedParts & Pick<StepProps, 'page'>;

const Pressure = ({ page, ...parts }: Parts) => (
  <div className="fields">
    <NumberField
      {...boundField(parts, 'pressure.systolicMmhg')}
      label={say('resting-blood-pressure-upper')}
      hint={pressureBefore(page)}
      unit="mmHg"
      isWhole
      isOptional
    />
    <NumberField
      {...boundField(parts, 'pressure.diastolicMmhg')}
      label={say('resting-blood-pressure-lower')}
      hint={say('seated')}
      unit="mmHg"
      isWhole
      isOptional
    />
  </div>
);

const Body = ({ page, ...parts }: Parts) => (
  <fieldset className="visit-group">
    <legend className="field-legend">{say('for-body-weight')}</legend>
    <div className="fields">
      <NumberField
        {...boundField(parts, 'mass.massKg')}
        label="Weight"
        hint={massBefore(page)}
        unit="kg"
        isOptional
      />
      <NumberField
        {...boundField(parts, 'stature.statureCm')}
        label="Height"
        hint={statureBefore(page)}
        unit="cm"
        isOptional
      />
      <RadioGroup
        name="formulaSex"
        legend={say('formula-sex')}
        isWrapped
        error={parts.errorOf('formulaSex')}
        options={[
          { value: 'female', label: 'Female' },
          { value: 'male', label: 'Male' },
        ]}
        chosen={parts.typed.formulaSex as 'female' | 'male' | undefined}
        onChoose={(value) => parts.onType('formulaSex', value)}
      />
    </div>
  </fieldset>
);

export const MeasurementsStep = (props: StepProps) => {
  const at = useStep(props);
  const parts = { page: props.page, typed: at.typed, onType: at.onType, errorOf: at.submit.errorOf };
  return (
    <SavedStep {...props} at={at}>
      <Pressure {...parts} />
      <Body {...parts} />
      <p className="soft">
        {say('other-measurements')}{' '}
        <a href={`/patients/${props.patientId}/measurements`}>{say('measurements')}</a>
      </p>
    </SavedStep>
  );
};
