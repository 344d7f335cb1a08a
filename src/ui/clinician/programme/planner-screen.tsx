/** The week the patient follows. */
import { plannedExercise } from '#core/prescribing/programme/planned-exercise.ts';
import type { ProgrammeValues } from '#core/prescribing/programme/session-length.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Prescriptions, ProgrammeAnswer } from '#ui/clinician/answers.ts';
import { PlannerForm } from './planner-form.tsx';

export const PlannerScreen = (props: {
  readonly patientId: string;
  readonly prescriptions: Prescriptions;
  readonly programme: ProgrammeAnswer;
  readonly values: ProgrammeValues;
}) => {
  const exercises = props.prescriptions.inForce.map(plannedExercise);
  const { programme } = props;
  return (
    <div className="stack">
      <p className="lead">
        {programme
          ? `Version ${programme.version} applies since ${dayInWords(programme.fromDay)}.`
          : 'No week is planned yet. The patient sees every exercise every day, and cuff work without a clinician on Monday, Wednesday and Friday only.'}
      </p>
      {exercises.length === 0 ? (
        <p>
          No prescription is in force. <a href={`/patients/${props.patientId}/prescribe`}>Prescribe</a> and
          sign an exercise first.
        </p>
      ) : (
        <PlannerForm
          patientId={props.patientId}
          exercises={exercises}
          lines={programme?.lines ?? []}
          values={props.values}
        />
      )}
    </div>
  );
};
