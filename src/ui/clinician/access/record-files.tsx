/** Handing the record on as a file: whether the patient agreed, the form, and what was handed on before. */
import { say } from '#messages/en/staff/access.ts';
import { languages } from '#messages/languages.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { languageName, PaperLink } from '../documents/paper-link.tsx';
import { ExportLink } from './export-link.tsx';
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
    <h2>{say('record-as-a-file')}</h2>
    <p>
      {languages.map(({ tag }) => (
        <span key={tag}>
          <PaperLink kind="record" patientId={patientId} asked={{ language: tag }}>
            {say('own-copy', { language: languageName(tag) })}
          </PaperLink>{' '}
        </span>
      ))}
    </p>
    <p>
      <ExportLink format="csv" patientId={patientId}>
        {say('own-copy-csv')}
      </ExportLink>{' '}
      <ExportLink format="fhir" patientId={patientId}>
        {say('own-copy-fhir')}
      </ExportLink>{' '}
      <ExportLink format="json" patientId={patientId}>
        {say('own-copy-json')}
      </ExportLink>{' '}
      {languages.map(({ tag }) => (
        <span key={tag}>
          <ExportLink format="calendar" patientId={patientId} language={tag}>
            {say('own-copy-calendar', { language: languageName(tag) })}
          </ExportLink>{' '}
        </span>
      ))}
    </p>
    <p className="soft">{say('own-copy-hint')}</p>
    <p>{say('record-file-contents')}</p>
    {isConsented ? (
      <RecordFileForm patientId={patientId} day={day} />
    ) : (
      <p>
        {say('no-consent')} <a href={`/patients/${patientId}/care`}>Care</a>. {say('after-consent')}
      </p>
    )}
    <DefinitionList
      rows={handedOn.map((one) => ({
        key: one.id,
        name: say('handed-over', { at: when(one.at) }),
        value: say('handed-to', { 'handed-to': one.handedTo, by: one.by }),
      }))}
    />
  </section>
);
