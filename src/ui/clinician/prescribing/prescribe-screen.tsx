/** Prescribe: choose an exercise, set its dose beside the one in force, read what comes of it and sign. */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { ClinicMachine } from '#core/clinic/machine.ts';
import { exerciseById, exercisesFor } from '#core/exercises/catalogue.ts';
import type { ExerciseId } from '#core/exercises/ids.ts';
import { dosesBeside } from '#core/prescribing/beside.ts';
import { cautionsNewTo } from '#core/prescribing/proposal-parts.ts';
import { requestOfDose } from '#core/prescribing/request-of-dose.ts';
import { anthropometryOf } from '#core/prescribing/variation/variation-for-patient.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { say as sayTemplate } from '#messages/en/staff/prescribing/templates.ts';
import { tradeNames } from '#messages/trade-names.ts';
import type {
  Choice,
  ClinicTemplate,
  DangerAnswer,
  EarlierDoses,
  Patient,
  Prescriptions,
  ProposedTemplate,
  Version,
} from '../answers.ts';
import { type Typed, typedFrom } from '../forms/typed.ts';
import type { ClinicClock } from '../when.ts';
import { rowDose } from '../worklist/row-dose.tsx';
import type { ChoiceAddress } from './choose/choice-address.ts';
import { ExercisePicker } from './choose/exercise-picker.tsx';
import { aboutNow } from './earlier/about-now.ts';
import { heldNow } from './held.ts';
import { InForceList } from './in-force-list.tsx';
import { type LadderRow, ladderRows } from './ladder-rows.ts';
import { MethodChoice } from './method-choice.tsx';
import { NeedsLine } from './needs-line.tsx';
import { PrescribeForm } from './prescribe-form.tsx';
import { SignTogether } from './sign-together.tsx';
import { filledFrom } from './templates/filled-from.ts';
import { TemplateUse } from './templates/template-use.tsx';

export interface PrescribeProps {
  readonly patient: Patient;
  readonly outcomes: readonly MethodOutcome[];
  readonly measurements: readonly Measurement[];
  readonly at: ChoiceAddress;
  readonly choices: readonly Choice[];
  readonly prescriptions: Prescriptions;
  readonly danger: DangerAnswer;
  /** Of the clinic, retired ones among them. */
  readonly machines: readonly ClinicMachine[];
  /** Of the clinic, those that are offered. */
  readonly templates: readonly ClinicTemplate[];
  /** The template that was chosen, as it comes out for this patient. */
  readonly template: ProposedTemplate | null;
  /** Of the exercise whose version in force is chosen. */
  readonly earlier: EarlierDoses;
  /** Of this clinician, on this page, for this patient; neither signed nor added. */
  readonly typedBefore: Typed;
  readonly signer: string;
  readonly clock: ClinicClock;
}

const laddersFor = ({
  patient,
  measurements,
}: PrescribeProps): Readonly<Record<string, readonly LadderRow[]>> => {
  const person = anthropometryOf({ measurements, formulaSex: patient.profile?.formulaSex ?? null });
  if (!person) return {};
  const families = [...new Set(exercisesFor('variation').map((exercise) => exercise.family))];
  return Object.fromEntries(families.map((family) => [family, ladderRows(family, person)]));
};

/** Doses that wait, each beside the one it takes the place of. */
const waitingOf = ({ unsigned, inForce }: Prescriptions) =>
  unsigned.map((waiting) => {
    const before = inForce.find(({ itemId }) => itemId === waiting.itemId);
    return rowDose(
      {
        prescriptionId: waiting.id,
        dose: waiting.dose,
        badDay: waiting.badDay,
        before: before?.dose ?? null,
        beside: dosesBeside(waiting.dose, waiting.itemId, inForce),
        plannedDays: waiting.plannedDays,
        newCautions: [...cautionsNewTo(waiting.cautions, before?.cautions ?? [])],
      },
      waiting.cautions,
    );
  });

/** While no exercise is chosen: what came of a template, or the doses in force. */
const NotChosen = ({ patient, at, template, prescriptions, machines, danger, clock }: PrescribeProps) => {
  const { inForce, plannedDaysOfNew } = prescriptions;
  return template ? (
    <TemplateUse
      {...{ at, template, inForce, plannedDaysOfNew }}
      patientId={patient.id}
      heldBy={(itemId) => heldNow(danger, clock, itemId)}
    />
  ) : (
    <div className="stack-close">
      {at.template ? <p role="status">{sayTemplate('use.gone')}</p> : null}
      <InForceList {...{ at, inForce, machines }} patientId={patient.id} />
    </div>
  );
};

const SetAndResult = (props: PrescribeProps & { readonly version: Version | null }) => {
  const { patient, at, version, measurements, machines } = props;
  const { method, exerciseId = '', side } = at;
  const together = (
    <SignTogether
      patientId={patient.id}
      doses={waitingOf(props.prescriptions)}
      signer={props.signer}
      readAt={props.clock.now}
    />
  );
  if (!method || !exerciseById(exerciseId))
    return (
      <>
        <NotChosen {...props} />
        <div className="result stack">{together}</div>
      </>
    );
  const now = version ? typedFrom(requestOfDose({ measurements }, version.dose)) : null;
  const filled = filledFrom(props.template, at);
  const isTested = measurements.some(
    (row) => row.kind === 'repetitions-to-failure' && row.exerciseId === exerciseId && row.side === side,
  );
  return (
    <PrescribeForm
      key={`${method} ${exerciseId} ${side} ${version?.itemId} ${at.template} ${at.place}`}
      ladders={method === 'variation' ? laddersFor(props) : {}}
      readAt={props.clock.now}
      inForce={version}
      allInForce={props.prescriptions.inForce}
      about={[...(filled?.said ?? []), ...aboutNow(props, version, method)]}
      trade={tradeNames[exerciseId as ExerciseId]}
      start={{ ...(now ?? { exerciseId, ...(side ? { side } : {}) }), ...filled?.typed }}
      kept={props.typedBefore}
      of={{ method, exerciseId, side, itemId: version?.itemId }}
      now={now}
      {...{ patientId: patient.id, method, machines, signer: props.signer }}
      ownedKg={patient.profile?.ownedLoadsKg ?? []}
      isMaximumKnown={method !== 'low-load' || isTested}
      held={heldNow(props.danger, props.clock, version?.itemId ?? null)}
      plannedDays={version ? version.plannedDays : props.prescriptions.plannedDaysOfNew}
    >
      {together}
    </PrescribeForm>
  );
};

const chosenBy = ({ dose: { exerciseId, method, side } }: Version) => ({ exerciseId, method, side });

export const PrescribeScreen = (props: PrescribeProps) => {
  const { patient, prescriptions } = props;
  const version = prescriptions.inForce.find(({ itemId }) => itemId === props.at.line) ?? null;
  const at = version ? { ...props.at, ...chosenBy(version) } : props.at;
  return (
    <div className="stack">
      <MethodChoice
        patientId={patient.id}
        outcomes={props.outcomes}
        held={heldNow(props.danger, props.clock, version?.itemId ?? null)}
        at={at}
      />
      <NeedsLine patient={patient} measurements={props.measurements} />
      <div className="choose-set-result">
        <ExercisePicker
          patientId={patient.id}
          at={at}
          choices={props.choices}
          inForce={prescriptions.inForce}
          templates={props.templates}
        />
        <SetAndResult {...props} at={at} version={version} />
      </div>
    </div>
  );
};
