/** Handing the record on as a file: whether the patient agreed, the form, and what was handed on before. */
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { RecordFileForm, type RecordFileFormProps } from './record-file-form.tsx';

export interface RecordFilesProps extends RecordFileFormProps {
  readonly isConsented: boolean;
  readonly handedOn: readonly {
    readonly id: string;
    readonly at: number;
    readonly by: string;
    readonly handedTo: string;
  }[];
  readonly when: (instant: number) => string;
}

export const RecordFiles = ({ patientId, day, isConsented, handedOn, when }: RecordFilesProps) => (
  <section className="stack screen-only">
    <h2>Record as a file</h2>
    <p>
      One JSON file with every row of the record: profile, screenings, measurements, prescriptions, what was
      logged, decisions and messages. Sign-ins, phones and unsent drafts are not in it.
    </p>
    {isConsented ? (
      <RecordFileForm patientId={patientId} day={day} />
    ) : (
      <p>
        The patient has not consented to this. Ask, and record the answer under{' '}
        <a href={`/patients/${patientId}/care`}>Care</a>. Then you can make the file.
      </p>
    )}
    <DefinitionList
      rows={handedOn.map((one) => ({
        key: one.id,
        name: `Handed over ${when(one.at)}`,
        value: `To ${one.handedTo}, by ${one.by}`,
      }))}
    />
  </section>
);
