/** Incidents of the clinic: a new one, those that are open, those that are closed, and all of them as a file. */
import { say } from '#messages/en/staff/administration/incidents.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { IncidentAnswer } from '../answers.ts';
import type { ClinicClock } from '../when.ts';
import { WriteForm } from './incident-forms.tsx';
import { IncidentItem } from './incident-view.tsx';

export interface NamedPatient {
  readonly patientId: string;
  readonly name: string;
}

interface IncidentsProps {
  readonly incidents: readonly IncidentAnswer[];
  /** Of the record the page was opened from; null = of none. */
  readonly patient: NamedPatient | null;
  /** Records are for clinicians. */
  readonly mayName: boolean;
  readonly clock: ClinicClock;
}

const WhomLine = ({ patient, mayName }: Pick<IncidentsProps, 'patient' | 'mayName'>) => (
  <p>
    {patient ? say('whom.named', { name: patient.name }) : say('whom.nobody')}
    {patient ? (
      <>
        {' '}
        <a href="/incidents">{say('whom.nobody-instead')}</a>
      </>
    ) : null}
    {!patient && mayName ? ` ${say('whom.how')}` : ''}
  </p>
);

const listed = ['open', 'closed'] as const;

const Incidents = ({ of, ...props }: IncidentsProps & { readonly of: (typeof listed)[number] }) => {
  const incidents = props.incidents.filter(({ isOpen }) => isOpen === (of === 'open'));
  return (
    <section className="stack" aria-labelledby={`incidents-${of}`}>
      <h2 id={`incidents-${of}`}>{say(of, { count: incidents.length })}</h2>
      {incidents.length === 0 ? <p className="soft">{say(`none.${of}`)}</p> : null}
      <ul className="plain-list stack-wide">
        {incidents.map((incident) => (
          <IncidentItem
            key={incident.id}
            incident={incident}
            clock={props.clock}
            patientId={props.patient?.patientId ?? null}
          />
        ))}
      </ul>
    </section>
  );
};

export const IncidentsScreen = (props: IncidentsProps) => (
  <div className="stack-wide">
    <PageHeading>{say('title')}</PageHeading>
    <div className="stack-close">
      <p>{say('lead')}</p>
      {props.incidents.length > 0 ? (
        <p className="screen-only">
          <a href="/incidents/file" download>
            {say('file')}
          </a>
          <br />
          <span className="soft small">{say('file.hint')}</span>
        </p>
      ) : null}
    </div>
    <section className="stack-close screen-only" aria-labelledby="incident-write">
      <h2 id="incident-write">{say('write')}</h2>
      <WhomLine {...props} />
      <p className="soft small">{say('kinds')}</p>
      <WriteForm key={props.patient?.patientId ?? ''} patientId={props.patient?.patientId ?? null} />
    </section>
    {listed.map((of) => (
      <Incidents key={of} of={of} {...props} />
    ))}
  </div>
);
