/** The week the patient follows. */
import { plannedExercise } from '#core/prescribing/programme/planned-exercise.ts';
import type { ProgrammeValues } from '#core/prescribing/programme/session-length.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/programme.ts';
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
          ? say('applies', { version: programme.version, date: dayInWords(programme.fromDay) })
          : say('none')}
      </p>
      {exercises.length === 0 ? (
        <p>
          {say('no-prescription')} <a href={`/patients/${props.patientId}/prescribe`}>Prescribe</a>{' '}
          {say('prescribe-first')}
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
