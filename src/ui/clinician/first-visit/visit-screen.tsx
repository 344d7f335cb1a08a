/** A first visit: its steps on the left, one of them in the middle, and on the right what it means so far. */
import { eligibilityNow } from '#core/episode/eligibility-now.ts';
import type { FirstVisitStep } from '#core/episode/first-visit/first-visit-steps.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { plannedExercise } from '#core/prescribing/programme/planned-exercise.ts';
import type { ProgrammeValues } from '#core/prescribing/programme/session-length.ts';
import { invitationSlips } from '#messages/invitation-slips.ts';
import type { Choice, DangerAnswer, Patient, Prescriptions, ProgrammeAnswer } from '../answers.ts';
import type { FirstVisitPage } from '../episode/answers.ts';
import { heldNow } from '../prescribing/held.ts';
import { fullName } from '../record/patient-bar.tsx';
import type { ClinicClock } from '../when.ts';
import { ConsentsStep } from './consents-step.tsx';
import { ExerciseStep } from './exercise-step.tsx';
import type { Typed } from './first-visit-state.ts';
import { HomeStep } from './home-step.tsx';
import { InvitationStep, WeekStep } from './last-steps.tsx';
import { Means } from './means.tsx';
import { MeasurementsStep } from './measurements-step.tsx';
import { NothingPossible } from './nothing-possible.tsx';
import { ReasonStep } from './reason-step.tsx';
import { ScreeningStep } from './screening-step.tsx';
import { StepList } from './step-list.tsx';
import { waysOf } from './ways.ts';

export interface VisitProps {
  readonly patient: Patient;
  readonly step: FirstVisitStep;
  readonly page: FirstVisitPage;
  readonly draft: Typed | null;
  readonly choices: readonly Choice[];
  readonly prescriptions: Prescriptions;
  readonly programme: ProgrammeAnswer;
  readonly values: ProgrammeValues;
  readonly danger: DangerAnswer;
  readonly signer: string;
  readonly origin: string;
  readonly clock: ClinicClock;
}

const Exercise = (props: VisitProps) => {
  const { patient, page, clock } = props;
  const isRefused = page.states.some(({ step, state }) => step === 'exercise' && state === 'refused');
  const outcomes = eligibilityNow(page.basis);
  if (isRefused) return <NothingPossible patientId={patient.id} outcomes={outcomes} />;
  return (
    <ExerciseStep
      patientId={patient.id}
      step="exercise"
      page={page}
      draft={props.draft}
      {...waysOf(props.choices, patient.profile)}
      signer={props.signer}
      readAt={clock.now}
      held={heldNow(props.danger, clock, null)}
      allInForce={props.prescriptions.inForce}
      inForce={props.prescriptions.inForce.map(
        ({ dose }) => `${exerciseTitle(dose.exerciseId)}: ${doseInShort(dose)}`,
      )}
    />
  );
};

const Week = ({ patient, prescriptions, programme, values }: VisitProps) => (
  <WeekStep
    patientId={patient.id}
    exercises={prescriptions.inForce.map(plannedExercise)}
    lines={programme?.lines ?? []}
    values={values}
  />
);

const Invitation = ({ patient, page, origin, clock }: VisitProps) => (
  <InvitationStep
    patientId={patient.id}
    patientName={fullName(patient)}
    origin={origin}
    zone={clock.zone}
    slips={invitationSlips(origin)}
    isMonitored={page.consents.some(({ kind, state }) => kind === 'remote-monitoring' && state === 'given')}
    isLetIn={page.states.some(({ step, state }) => step === 'invitation' && state === 'done')}
  />
);

const Step = (props: VisitProps) => {
  const { patient, page, draft, step } = props;
  const typed = { patientId: patient.id, page, draft };
  switch (step) {
    case 'consents':
      return <ConsentsStep {...typed} step={step} patient={patient} />;
    case 'reason':
      return <ReasonStep {...typed} step={step} />;
    case 'screening':
      return <ScreeningStep {...typed} step={step} />;
    case 'measurements':
      return <MeasurementsStep {...typed} step={step} />;
    case 'home':
      return <HomeStep {...typed} step={step} />;
    case 'exercise':
      return <Exercise {...props} />;
    case 'week':
      return <Week {...props} />;
    case 'invitation':
      return <Invitation {...props} />;
  }
};

/** Beside these steps stands what they leave of each method; the screening says so itself, as it is answered. */
const showsMeans: readonly FirstVisitStep[] = ['measurements', 'exercise'];

export const VisitScreen = (props: VisitProps) => (
  <div className="visit">
    <StepList patientId={props.patient.id} page={props.page} at={props.step} />
    <div key={props.step} className={showsMeans.includes(props.step) ? 'visit-step-means' : undefined}>
      <Step {...props} />
      {showsMeans.includes(props.step) ? <Means outcomes={eligibilityNow(props.page.basis)} /> : null}
    </div>
  </div>
);
