/** The week the patient follows. */
import { dayInWords } from '#core/review/plain-words.ts';
import type { Prescriptions, ProgrammeAnswer } from '../answers.ts';
import { doseTitle } from '../dose-words.ts';
import { ProgrammeForm } from './programme-form.tsx';

export const ProgrammeScreen = (props: {
  readonly patientId: string;
  readonly prescriptions: Prescriptions;
  readonly programme: ProgrammeAnswer;
}) => {
  const rows = props.prescriptions.inForce.map((version) => ({
    lineId: version.lineId,
    title: doseTitle(version.dose),
    perWeek: version.dose.sessionsPerWeek,
  }));
  const { programme } = props;
  return (
    <div className="stack">
      <p className="lead">
        {programme
          ? `Version ${programme.version} holds since ${dayInWords(programme.fromDay)}.`
          : 'No week is planned yet; the patient’s page says so.'}
      </p>
      {rows.length === 0 ? (
        <p>
          Nothing is in force. <a href={`/patients/${props.patientId}/prescribe`}>Prescribe</a> and sign
          first.
        </p>
      ) : (
        <ProgrammeForm patientId={props.patientId} rows={rows} lines={programme?.lines ?? []} />
      )}
    </div>
  );
};
