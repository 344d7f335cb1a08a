'use client';
/** One step: its heading, what is typed, and one button that saves it and goes on. Nothing typed is lost by going back. */
import { useRouter } from 'next/navigation';
import { type FormEvent, type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { type FirstVisitStep, stepAfter, stepBefore } from '#core/episode/first-visit/first-visit-steps.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { client } from '#ui/clinician/client.ts';
import { type Submit, useSubmit } from '#ui/clinician/forms/use-submit.ts';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import type { FirstVisitPage } from '../episode/answers.ts';
import type { DraftState } from '../forms/use-draft.ts';
import { recordedIn, type Typed, type TypedStep } from './first-visit-state.ts';
import { addressOfStep, stepPath } from './step-address.ts';
import { stepFields } from './step-fields.ts';
import { useStepDraft } from './use-step-draft.ts';
import { hasParts, requireAllSaved, visitFrom } from './visit-to-send.ts';

const draftWords: Readonly<Record<DraftState, string>> = {
  none: '',
  waiting: say('saving-the-draft'),
  saved: say('draft-saved'),
  'not-saved': say('draft-not-saved'),
};

/** Set as a step is saved, so that the next one is read from its heading on; a page opened anew begins at its top. */
let cameFromStep = false;

export const StepHeading = ({
  step,
  children,
}: {
  readonly step: FirstVisitStep;
  readonly children?: ReactNode;
}) => {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (cameFromStep) heading.current?.focus();
    cameFromStep = false;
  }, []);
  return (
    <div className="side-head">
      <h2 ref={heading} tabIndex={-1} id="step-heading">
        {say(`step.${step}`)}
      </h2>
      {children}
    </div>
  );
};

export const useGoOn = (patientId: string, step: FirstVisitStep) => {
  const router = useRouter();
  return () => {
    cameFromStep = true;
    router.push(`/patients/${patientId}/${stepPath(stepAfter(step))}`);
  };
};

export interface StepProps {
  readonly patientId: string;
  readonly step: TypedStep;
  readonly page: FirstVisitPage;
  readonly draft: Typed | null;
}

export interface TypedParts {
  readonly typed: Typed;
  readonly onType: (name: string, text: string) => void;
  readonly errorOf: (name: string) => string | undefined;
}

/** What is typed into a step, its draft, and saving what of it can be saved. */
export const useStep = ({ patientId, step, page, draft }: StepProps, fallback = 'go-on') => {
  const onRecord = useMemo(() => recordedIn(step, page), [step, page]);
  const [typed, setTyped] = useState<Typed>({ ...onRecord, ...draft });
  const [isSaved, setSaved] = useState(false);
  const submit = useSubmit('', fallback, stepFields);
  const draftState = useStepDraft({ patientId, step, typed, onRecord, isDone: isSaved });
  const drop = async () => {
    setSaved(true);
    await client.clinician.drafts.drop.mutate({ patientId, form: `first-visit-${step}` });
  };
  /** Throws what was not saved, for `submit` to show. Where more than this is to come the draft stays. */
  const save = async (confirmed: boolean, isWhole = true) => {
    const sent = visitFrom(step, typed, page);
    const visit = { ...sent.visit, seenProfile: page.profile?.version ?? null };
    const { visits } = client.clinician;
    const saved = hasParts(sent) ? await visits.saveFirstVisit.mutate({ patientId, visit, confirmed }) : null;
    requireAllSaved(saved, sent.problems);
    if (isWhole) await drop();
  };
  const onType = (name: string, text: string) => {
    setSaved(false);
    setTyped((known) => ({ ...known, [name]: text }));
    submit.answered(name, text);
  };
  return { typed, setTyped, onType, submit, draftState, save, drop };
};

export const Back = ({ patientId, step }: { readonly patientId: string; readonly step: FirstVisitStep }) => {
  const before = stepBefore(step);
  return before ? (
    <a href={addressOfStep(patientId, before)}>{say('back-to', { step: say(`step.${before}`) })}</a>
  ) : null;
};

export const StepFoot = (props: {
  readonly patientId: string;
  readonly step: FirstVisitStep;
  readonly children: ReactNode;
  readonly draftState?: DraftState;
}) => (
  <div className="visit-foot row">
    {props.children}
    <Back patientId={props.patientId} step={props.step} />
    <span role="status" className="soft small">
      {draftWords[props.draftState ?? 'none']}
    </span>
  </div>
);

export const Asked = ({ submit, onYes }: { readonly submit: Submit; readonly onYes: () => void }) => (
  <ConfirmQuestion
    question={submit.questions.join(' ')}
    yes={say('it-is-correct-save')}
    no={say('change-it')}
    onYes={onYes}
    onNo={submit.forget}
  />
);

/** A step whose button saves and goes on. */
export const SavedStep = (
  props: StepProps & {
    readonly at: ReturnType<typeof useStep>;
    readonly head?: ReactNode;
    readonly children: ReactNode;
    /** Beside the one button. */
    readonly more?: ReactNode;
  },
) => {
  const { patientId, step, at } = props;
  const goOn = useGoOn(patientId, step);
  const router = useRouter();
  const send = async (confirmed: boolean) => {
    if (await at.submit.send([], () => at.save(confirmed))) goOn();
    // What was saved of it is on record now.
    else router.refresh();
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    void send(false);
  };
  return (
    <ScriptedForm className="stack" onSubmit={onSubmit} aria-labelledby="step-heading">
      <StepHeading step={step}>{props.head}</StepHeading>
      <ErrorSummary problems={at.submit.problems} />
      {props.children}
      {at.submit.questions.length > 0 ? (
        <Asked submit={at.submit} onYes={() => void send(true)} />
      ) : (
        <StepFoot patientId={patientId} step={step} draftState={at.draftState}>
          <SendButton id="go-on" aria-disabled={at.submit.isBusy || undefined}>
            {say('save-on-to', { step: say(`step.${stepAfter(step)}`) })}
          </SendButton>
          {props.more}
        </StepFoot>
      )}
    </ScriptedForm>
  );
};
