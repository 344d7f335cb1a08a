/** Usual pain and limits as they hold; and, folded, who the person is and what is known for dosing. */
import { boundInWords } from '#core/episode/limit-degrees.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/record/summary.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { addressOfStep } from '../first-visit/step-address.ts';
import { optionInWords } from '../forms/field-words.ts';
import { CareProfileList, usualInWords } from '../record/care-profile-list.tsx';
import { PatientDetailsSection } from '../record/patient-details-section.tsx';
import type { SummaryProps } from './summary-props.ts';

export const LimitsInShort = ({ patient, summary, care, day }: SummaryProps) => {
  const joints = patient.profile?.followedJoints ?? [];
  const limits = care.limits.filter(({ to }) => to === null || to >= day);
  return (
    <section className="stack-close">
      <div className="side-head">
        <h2>{say('limits')}</h2>
        <a href={`/patients/${patient.id}/care`}>Care</a>
      </div>
      <ul className="plain-list lined">
        {joints.map((joint) => (
          <li key={joint}>
            <strong>{jointInWords(joint)}</strong>:{' '}
            {usualInWords(
              summary.baselines.findLast((row) => row.joint === joint),
              day,
            )}
          </li>
        ))}
        {limits.map((limit) => (
          <li key={limit.id}>
            <strong>{jointInWords(limit.joint)}</strong>: {optionInWords(limit.kind)}
            {limit.limitKg === null ? '' : say('limits.kg', { load: limit.limitKg })}
            {boundInWords(limit)}{' '}
            <span className="soft">
              {limit.to === null
                ? say('limits.open')
                : say('limits.until', { date: dayInWords(limit.to, day) })}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
};

export const PersonSection = (props: SummaryProps) => {
  const { patient, details, clock, summary, day } = props;
  return (
    <div id="person">
      <Disclosure summary={say('person')}>
        <CareProfileList patient={patient} baselines={summary.baselines} day={day} />
        <p className="row screen-only">
          <a href={addressOfStep(patient.id, 'reason')}>{say('change-reason')}</a>
          <a href={addressOfStep(patient.id, 'home')}>{say('change-home')}</a>
          <a href={addressOfStep(patient.id, 'measurements')}>{say('change-sex')}</a>
        </p>
        <PatientDetailsSection patientId={patient.id} details={details} clock={clock} />
      </Disclosure>
    </div>
  );
};
