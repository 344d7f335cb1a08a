'use client';
/** The first exercise: method, exercise, test; what is proposed from it, and the signature by name. */
import type { FormEvent } from 'react';
import { useState } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { client } from '#ui/clinician/client.ts';
import { LinkButton } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import type { Proposed } from '../answers.ts';
import type { FirstVisitPage } from '../episode/answers.ts';
import { readTyped } from '../forms/typed.ts';
import type { Held } from '../prescribing/held.ts';
import type { PrescribeFormProps } from '../prescribing/prescribe-form-props.ts';
import { ProposalResult, type ShownProposal } from '../prescribing/proposal-result.tsx';
import { allAsked, requestFrom } from '../prescribing/request-fields.ts';
import { ExerciseFields, methodIn } from './exercise-fields.tsx';
import { addressOfStep } from './step-address.ts';
import { Asked, StepFoot, StepHeading, type StepProps, useStep } from './step-frame.tsx';
import type { VisitWay } from './ways.ts';

export interface ExerciseStepProps extends StepProps {
  readonly ways: readonly VisitWay[];
  readonly notAtHome: number;
  readonly signer: string;
  readonly readAt: number;
  readonly held: readonly Held[];
  readonly allInForce: PrescribeFormProps['allInForce'];
  /** Exercises in force already, in short. */
  readonly inForce: readonly string[];
}

const useProposal = (props: ExerciseStepProps) => {
  const { patientId } = props;
  const at = useStep(props, 'propose-first');
  const [shown, setShown] = useState<ShownProposal | null>(null);
  const [isKept, setKept] = useState(false);
  const propose = (confirmed: boolean) => {
    setShown(null);
    setKept(false);
    const method = methodIn(at.typed);
    const { value, problems } = readTyped(allAsked(method ?? 'low-load', at.typed), at.typed);
    const unchosen = [
      ...(method ? [] : [{ field: 'method', text: say('choose-the-method') }]),
      ...(at.typed.exerciseId ? [] : [{ field: 'exerciseId', text: say('choose-the-exercise') }]),
    ];
    const other = problems.filter(({ field }) => field !== 'exerciseId' && field !== 'side');
    void at.submit.send([...unchosen, ...other], async () => {
      // The choice of exercise and figures stays a draft until it is signed.
      await at.save(confirmed, false);
      const request = requestFrom(method ?? 'low-load', value);
      const proposed = await client.clinician.prescriptions.propose.mutate({ patientId, request });
      setShown({ request, proposed: proposed as Proposed, inForce: null });
    });
  };
  const type = (name: string, text: string) => {
    // What was proposed no longer answers what is asked.
    setShown(null);
    at.onType(name, text);
  };
  const kept = () => {
    setShown(null);
    setKept(true);
  };
  return { at, shown, isKept, propose, type, kept };
};

/** A visit goes on without it; whoever signs is told. */
export const usualPainUnknown = ({ profile, baselines }: FirstVisitPage): readonly Joint[] =>
  (profile?.followedJoints ?? []).filter(
    (joint) => (baselines.findLast((one) => one.joint === joint)?.usualPain ?? null) === null,
  );

const Result = (
  props: ExerciseStepProps & {
    readonly shown: ShownProposal;
    readonly onKept: () => void;
    readonly onSigned: () => Promise<void>;
  },
) => (
  <ProposalResult
    shown={props.shown}
    patientId={props.patientId}
    signer={props.signer}
    held={props.held}
    readAt={props.readAt}
    allInForce={props.allInForce}
    usualPainUnknown={usualPainUnknown(props.page)}
    onKept={props.onKept}
    onSigned={() => void props.onSigned()}
    next={
      <p>
        <LinkButton href={addressOfStep(props.patientId, 'week')}>{say('on-to-week')}</LinkButton>
      </p>
    }
  />
);

const InForce = ({ patientId, inForce }: Pick<ExerciseStepProps, 'patientId' | 'inForce'>) => (
  <div className="stack-close">
    <p>{say('signed-so-far')}</p>
    <ul>
      {inForce.map((dose) => (
        <li key={dose}>{dose}</li>
      ))}
    </ul>
    <p className="row">
      <LinkButton href={addressOfStep(patientId, 'week')}>{say('on-to-week')}</LinkButton>
      <a href={`/patients/${patientId}/prescriptions`}>{say('all-prescriptions')}</a>
    </p>
  </div>
);

export const ExerciseStep = (props: ExerciseStepProps) => {
  const { patientId, step, inForce } = props;
  const { at, shown, isKept, propose, type, kept } = useProposal(props);
  const isSigned = inForce.length > 0 && shown === null;
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    propose(false);
  };
  return (
    <div className="stack">
      <ScriptedForm className="stack" onSubmit={onSubmit} aria-labelledby="step-heading">
        <StepHeading step={step} />
        {isSigned ? <InForce patientId={patientId} inForce={inForce} /> : null}
        <ErrorSummary problems={at.submit.problems} />
        <ExerciseFields {...props} typed={at.typed} onType={type} errorOf={at.submit.errorOf} />
        {at.submit.questions.length > 0 ? (
          <Asked submit={at.submit} onYes={() => propose(true)} />
        ) : (
          <StepFoot patientId={patientId} step={step} draftState={at.draftState}>
            <SendButton
              id="propose-first"
              tone={shown || isSigned ? 'plain' : 'primary'}
              aria-disabled={at.submit.isBusy || undefined}
            >
              {shown ? say('propose-again') : isSigned ? say('propose-another') : say('save-and-propose')}
            </SendButton>
          </StepFoot>
        )}
      </ScriptedForm>
      {shown ? <Result {...props} shown={shown} onKept={kept} onSigned={at.drop} /> : null}
      {isKept ? (
        <p role="status">
          {say('kept-unsigned')} <a href={`/patients/${patientId}/prescribe`}>{say('sign-on-prescribe')}</a>
        </p>
      ) : null}
    </div>
  );
};
