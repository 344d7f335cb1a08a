/** One patient's record: the bar, the pages of the place one is in, and the page. */
import type { ReactNode } from 'react';
import { say } from '#messages/en/staff/record.ts';
import { MergeNotice } from './merge-notice.tsx';
import { PatientBar, type PatientBarProps } from './patient-bar.tsx';
import { placeOf } from './places.ts';
import { StoppedNotice } from './stopped-notice.tsx';

export interface RecordFrameProps extends PatientBarProps {
  readonly children: ReactNode;
}

const PlacePages = ({ patient, section }: PatientBarProps) => {
  const { name, pages } = placeOf(section);
  if (pages.length === 1) return null;
  return (
    <nav aria-label={say('pages-of', { place: name })} className="place-pages screen-only">
      <ul>
        {pages.map(({ path, text }) => (
          <li key={path}>
            <a href={`/patients/${patient.id}${path}`} aria-current={path === section ? 'page' : undefined}>
              {text}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
};

/** Places whose pages show doses as they were signed. */
const dosePlaces: readonly string[] = ['Summary', 'Plan'];

export const RecordFrame = ({ children, ...bar }: RecordFrameProps) => (
  <div className="record">
    <PatientBar {...bar} />
    <MergeNotice patient={bar.patient} />
    <PlacePages {...bar} />
    {dosePlaces.includes(placeOf(bar.section).name) ? <StoppedNotice state={bar.bar.state} /> : null}
    <div className="stack-wide">{children}</div>
  </div>
);
