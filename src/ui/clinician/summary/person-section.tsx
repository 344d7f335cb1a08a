/** Usual pain and limits as they hold; and, folded, who the person is and what is known for dosing. */
import { limitsInForce } from '#core/decision/dose/limits.ts';
import { boundInWords } from '#core/episode/limit-degrees.ts';
import { joints as everyJoint } from '#core/exercises/joints.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { type Day, dayNumber } from '#core/time/day.ts';
import { say } from '#messages/en/staff/record/summary.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { addressOfStep } from '../first-visit/step-address.ts';
import { optionInWords } from '../forms/field-words.ts';
import { CareProfileList, usualInWords } from '../record/care-profile-list.tsx';
import { PatientDetailsSection } from '../record/patient-details-section.tsx';
import type { SummaryProps } from './summary-props.ts';

type LimitOfCare = SummaryProps['care']['limits'][number];

/** Those that bind today, past their last day as well, and those still to come; not what was lifted or followed. */
const limitsToTell = (limits: readonly LimitOfCare[], day: Day) => [
  ...limitsInForce(limits, everyJoint, dayNumber(day)),
  ...limits
    .filter(({ kind, from, liftedOn }) => kind !== 'none' && from > day && !liftedOn)
    .map((limit) => ({ ...limit, isExpired: false })),
];

const daysOf = ({ from, to, isExpired }: ReturnType<typeof limitsToTell>[number], day: Day): string =>
  [
    ...(from > day ? [say('limits.from', { date: dayInWords(from, day) })] : []),
    to === null
      ? say('limits.open')
      : say(isExpired ? 'limits.past' : 'limits.until', { date: dayInWords(to, day) }),
  ].join(' ');

export const LimitsInShort = ({ patient, summary, care, day }: SummaryProps) => {
  const joints = patient.profile?.followedJoints ?? [];
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
        {limitsToTell(care.limits, day).map((limit) => (
          <li key={limit.id}>
            <strong>{jointInWords(limit.joint)}</strong>: {optionInWords(limit.kind)}
            {limit.limitKg === null ? '' : say('limits.kg', { load: limit.limitKg })}
            {boundInWords(limit)} <span className="soft">{daysOf(limit, day)}</span>
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
