/** One patient's record: who it is, and its sections. */
import type { ReactNode } from 'react';
import { dayInWords, jointInWords, listed } from '#core/review/plain-words.ts';
import { ageYears, type Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/record.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { Patient } from '../answers.ts';
import { MergeNotice } from './merge-notice.tsx';

const sections = [
  { path: '', text: 'Overview' },
  { path: '/screening', text: 'Screening' },
  { path: '/measurements', text: 'Measurements' },
  { path: '/care', text: 'Care' },
  { path: '/prescribe', text: 'Prescribe' },
  { path: '/programme', text: 'Programme' },
  { path: '/prescriptions', text: 'Prescriptions' },
  { path: '/data-entry', text: say('data-entry') },
  { path: '/review', text: 'Review' },
  { path: '/warning-signs', text: say('signs-and-pauses') },
  { path: '/outcomes', text: 'Outcomes' },
  { path: '/access', text: say('phone-and-team') },
] as const;
type SectionPath = (typeof sections)[number]['path'];

export const fullName = (person: { readonly givenName: string; readonly familyName: string }): string =>
  `${person.givenName} ${person.familyName}`;

const factsOf = (patient: Patient, day: Day): string => {
  const { profile } = patient;
  const joints = listed((profile?.followedJoints ?? []).map(jointInWords));
  return [
    say('born', { date: dayInWords(patient.birthDay), years: ageYears(patient.birthDay, day) }),
    profile ? profile.diagnosis : say('no-profile'),
    joints ? say('following', { joints }) : say('no-joint'),
    patient.phone ? say('telephone', { number: patient.phone }) : say('no-telephone'),
    patient.patientNumber ? say('patient-number', { number: patient.patientNumber }) : '',
  ]
    .filter(Boolean)
    .join(' · ');
};

export interface RecordFrameProps {
  readonly patient: Patient;
  readonly day: Day;
  readonly section: SectionPath;
  readonly children: ReactNode;
}

export const RecordFrame = ({ patient, day, section, children }: RecordFrameProps) => {
  const title = sections.find((one) => one.path === section)?.text;
  return (
    <div className="stack-wide">
      <header className="record-head">
        <PageHeading caption={title}>{fullName(patient)}</PageHeading>
        <p className="soft record-facts">{factsOf(patient, day)}</p>
        <MergeNotice patient={patient} />
        <nav
          aria-label={say('record-of', { name: fullName(patient) })}
          className="record-sections screen-only"
        >
          <ul>
            {sections.map(({ path, text }) => (
              <li key={path}>
                <a
                  href={`/patients/${patient.id}${path}`}
                  aria-current={path === section ? 'page' : undefined}
                >
                  {text}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      </header>
      {children}
    </div>
  );
};
