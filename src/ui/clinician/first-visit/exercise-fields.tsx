'use client';
import { eligibilityNow } from '#core/episode/eligibility-now.ts';
import { methodsOpen } from '#core/episode/first-visit/first-visit-steps.ts';
import { type Method, methods } from '#core/prescribing/methods.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { boundField } from '#ui/design-system/bound-field.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import type { FirstVisitPage } from '../episode/answers.ts';
import { DescriptorFields } from '../forms/descriptor-fields.tsx';
import { eligibilityInWords, eligibilityOf } from '../prescribing/method-choice.tsx';
import { allAsked } from '../prescribing/request-fields.ts';
import { eligibilityStatus, methodInWords } from '../words.ts';
import type { Typed } from './first-visit-state.ts';
import { addressOfStep } from './step-address.ts';
import type { TypedParts } from './step-frame.tsx';
import type { VisitWay } from './ways.ts';

export const methodIn = (typed: Typed): Method | null =>
  methods.find((method) => method === typed.method) ?? null;

interface ExerciseFieldsProps extends TypedParts {
  readonly patientId: string;
  readonly page: FirstVisitPage;
  readonly ways: readonly VisitWay[];
  readonly notAtHome: number;
}

const MethodField = ({ page, typed, onType, errorOf }: ExerciseFieldsProps) => {
  const outcomes = eligibilityNow(page.basis);
  const of = (method: Method) => outcomes.filter((row) => row.method === method);
  const word = (method: Method) =>
    eligibilityStatus(
      eligibilityOf(of(method)),
      of(method).flatMap(({ reasons }) => reasons),
    ).word;
  return (
    <RadioGroup
      name="method"
      legend={say('method')}
      hint={say('only-eligible')}
      isWrapped
      error={errorOf('method')}
      options={methodsOpen(outcomes).map((method) => ({
        value: method,
        label: methodInWords[method],
        hint: eligibilityInWords(word(method), of(method)),
      }))}
      chosen={methodIn(typed)}
      onChoose={(method) => onType('method', method)}
    />
  );
};

const sideWords = { left: say('side.left'), right: say('side.right'), both: say('side.both') } as const;
const keyOf = ({ exerciseId, side }: Pick<VisitWay, 'exerciseId' | 'side'>) => `${exerciseId} ${side}`;

const testBefore = ({ page, typed }: ExerciseFieldsProps): string => {
  const last = page.measurements.findLast(
    (row) =>
      row.kind === 'repetitions-to-failure' && row.exerciseId === typed.exerciseId && row.side === typed.side,
  );
  return last?.kind === 'repetitions-to-failure'
    ? say('test-before', {
        repetitions: last.repetitions,
        'load-kg': last.loadKg,
        side: last.side,
        on: dayInWords(last.day),
      })
    : say('test-meaning');
};

const Test = (props: ExerciseFieldsProps) => (
  <div className="stack-close">
    <p className="soft">{testBefore(props)}</p>
    <div className="fields">
      <NumberField {...boundField(props, 'test.loadKg')} label={say('test-load')} unit="kg" />
      <NumberField
        {...boundField(props, 'test.repetitions')}
        label={say('test-repetitions-to-failure')}
        isWhole
      />
    </div>
  </div>
);

const chosenAbove = new Set(['exerciseId', 'side']);

/** Left empty, each is the clinic's own. */
const Figures = ({ method, ...props }: ExerciseFieldsProps & { readonly method: Method }) => {
  const fields = allAsked(method, props.typed).filter(({ name }) => !chosenAbove.has(name));
  return (
    <Disclosure
      summary={say('other-figures')}
      {...(fields.some(({ name }) => props.errorOf(name)) ? { isOpen: true } : {})}
    >
      <DescriptorFields typed={props.typed} onType={props.onType} errorOf={props.errorOf} fields={fields} />
    </Disclosure>
  );
};

export const ExerciseFields = (props: ExerciseFieldsProps) => {
  const { typed, ways, patientId, notAtHome } = props;
  const method = methodIn(typed);
  const choose = (key: string) => {
    const way = ways.find((one) => keyOf(one) === key);
    props.onType('exerciseId', way?.exerciseId ?? '');
    props.onType('side', way?.side ?? '');
  };
  const shown = ways.filter((way) => way.method === method);
  return (
    <>
      <MethodField {...props} />
      {method === 'occlusion' ? (
        <p>
          {say('occlusion-elsewhere')}{' '}
          <a href={`/patients/${patientId}/prescribe?method=occlusion`}>{say('to-prescribe')}</a>
        </p>
      ) : method && shown.length === 0 ? (
        <p>
          {say('no-exercise-found')} <a href={addressOfStep(patientId, 'reason')}>{say('step.reason')}</a> ·{' '}
          <a href={addressOfStep(patientId, 'home')}>{say('step.home')}</a> ·{' '}
          <a href={`/patients/${patientId}/prescribe?method=${method}`}>{say('to-prescribe')}</a>
        </p>
      ) : method ? (
        <>
          <SelectField
            name="exerciseId"
            label={say('begin-with')}
            hint={notAtHome > 0 ? say('not-at-home', { count: notAtHome }) : undefined}
            error={props.errorOf('exerciseId')}
            value={keyOf({ exerciseId: typed.exerciseId ?? '', side: (typed.side ?? '') as 'both' })}
            onChange={(event) => choose(event.target.value)}
            options={shown.map((way) => ({
              value: keyOf(way),
              label: say('way', { exercise: way.trade, side: sideWords[way.side] }),
            }))}
          />
          {method === 'low-load' ? <Test {...props} /> : null}
          <Figures {...props} method={method} />
          <p className="soft">
            {say('more-exercises')}{' '}
            <a href={`/patients/${patientId}/prescribe?method=${method}`}>{say('to-prescribe')}</a>
          </p>
        </>
      ) : null}
    </>
  );
};
