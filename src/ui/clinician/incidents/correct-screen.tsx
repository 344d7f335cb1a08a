/** One incident as it is corrected: what is saved stands in the place of the entry that counts. */
import { say } from '#messages/en/staff/administration/incidents.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { IncidentAnswer } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { CorrectForm } from './incident-forms.tsx';
import type { NamedPatient } from './incidents-screen.tsx';

interface CorrectProps {
  readonly incident: IncidentAnswer;
  /** null = nobody; left out = whom it was about before. */
  readonly patient: NamedPatient | null | undefined;
  readonly clock: ClinicClock;
}

const WhomLine = ({ incident, patient }: Pick<CorrectProps, 'incident' | 'patient'>) => {
  const { about } = incident.entry;
  const before = about.is === 'named' ? about : null;
  const named = patient === undefined ? before : patient;
  const isUnnamed = patient === undefined && about.is === 'unnamed';
  const said = named ? say('whom.named', { name: named.name }) : say('whom.nobody');
  return (
    <p>
      {isUnnamed ? say('whom.unnamed') : said}
      {named || isUnnamed ? (
        <>
          {' '}
          <a href={`/incidents?correct=${incident.id}&patient=none`}>{say('whom.nobody-instead')}</a>
        </>
      ) : null}
    </p>
  );
};

export const CorrectScreen = (props: CorrectProps) => {
  const { incident, patient, clock } = props;
  const { writtenBy: name, writtenAt } = incident.entry;
  return (
    <div className="stack">
      <PageHeading>{say('correct.title')}</PageHeading>
      <p>{say('correct.lead', { name, at: momentInWords(writtenAt, clock) })}</p>
      <WhomLine {...props} />
      <p className="soft small">{say('kinds')}</p>
      <CorrectForm incident={incident} patientId={patient === null ? null : patient?.patientId} />
      <p>
        <a href="/incidents">{say('back')}</a>
      </p>
    </div>
  );
};
