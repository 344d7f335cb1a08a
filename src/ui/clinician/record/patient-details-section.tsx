/** Name, birth, and how to reach the patient: what is in force, what stood there before, and a form to change it. */
import { detailInWords } from '#core/record/patient-details.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/record.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { PatientDetails } from '../answers.ts';
import type { Desk } from '../desk-calls.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { PatientDetailForm } from './patient-detail-form.tsx';

const becauseInWords = {
  first: say('because.first'),
  'changed-since': say('because.changed'),
  'entered-in-error': say('because.error'),
} as const;

const versionInWords = (version: PatientDetails[number]['versions'][number], clock: ClinicClock): string =>
  [
    version.value ?? (version.strikes === null ? 'empty' : say('value.taken-back')),
    `${becauseInWords[version.because]}, ${version.byName}, ${momentInWords(version.recordedAt, clock)}`,
    version.reason ?? '',
  ]
    .filter(Boolean)
    .join(' · ');

export const PatientDetailsSection = (props: {
  readonly patientId: string;
  readonly details: PatientDetails;
  readonly clock: ClinicClock;
  readonly desk?: Desk;
}) => {
  const changedOnes = props.details.filter(({ versions }) => versions.length > 1);
  return (
    <section className="stack-close">
      <h2>{say('details')}</h2>
      <DefinitionList
        rows={props.details.map(({ detail, value }) => ({
          key: detail,
          name: detailInWords(detail),
          value: value === null ? say('not-recorded') : detail === 'birthDay' ? dayInWords(value) : value,
        }))}
      />
      {changedOnes.length > 0 ? (
        <Disclosure summary={say('earlier-entries')}>
          <DefinitionList
            rows={changedOnes.map(({ detail, versions }) => ({
              key: detail,
              name: detailInWords(detail),
              value: (
                <ul className="plain-list">
                  {versions.toReversed().map((version) => (
                    <li key={version.version}>{versionInWords(version, props.clock)}</li>
                  ))}
                </ul>
              ),
            }))}
          />
        </Disclosure>
      ) : null}
      <Disclosure summary={say('detail.change')}>
        <PatientDetailForm patientId={props.patientId} details={props.details} desk={props.desk} />
      </Disclosure>
    </section>
  );
};
