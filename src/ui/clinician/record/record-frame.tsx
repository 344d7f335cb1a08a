/** One patient's record: who it is, and its sections. */
import type { ReactNode } from 'react';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { ageYears, type Day } from '#core/time/day.ts';
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
  { path: '/data-entry', text: 'Data entry' },
  { path: '/review', text: 'Review' },
  { path: '/warning-signs', text: 'Signs and pauses' },
  { path: '/outcomes', text: 'Outcomes' },
  { path: '/access', text: 'Phone and team' },
] as const;
type SectionPath = (typeof sections)[number]['path'];

export const fullName = (person: { readonly givenName: string; readonly familyName: string }): string =>
  `${person.givenName} ${person.familyName}`;

const factsOf = (patient: Patient, day: Day): string => {
  const { profile } = patient;
  const joints = profile?.followedJoints.map(jointInWords).join(' and ');
  return [
    `Born ${dayInWords(patient.birthDay)}, ${ageYears(patient.birthDay, day)} years`,
    profile ? profile.diagnosis : 'No care profile yet',
    joints ? `Following: ${joints}` : 'No joint is followed yet',
    patient.phone ? `Tel. ${patient.phone}` : 'No telephone number',
    patient.patientNumber ? `Patient number ${patient.patientNumber}` : '',
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
        <nav aria-label={`Record of ${fullName(patient)}`} className="record-sections screen-only">
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
