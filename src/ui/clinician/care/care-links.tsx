/** Ways from the care page: the course of care, a first visit, answers from before a visit, the page for the colleague. */
import { say } from '#messages/en/staff/care.ts';

const pages = [
  { path: '/care/episode', text: say('episode-of-care') },
  { path: '/care/first-visit', text: say('first-visit') },
  { path: '/care/pre-visit', text: say('pre-visit-answers') },
  { path: '/care/appointments', text: 'Appointments' },
  { path: '/handover', text: 'Handover' },
] as const;
export type CarePath = (typeof pages)[number]['path'];

export const CareLinks = ({
  patientId,
  current = null,
}: {
  readonly patientId: string;
  readonly current?: CarePath | null;
}) => (
  <nav aria-label="Care" className="care-links screen-only">
    <ul>
      <li>
        <a href={`/patients/${patientId}/care`} aria-current={current === null ? 'page' : undefined}>
          {say('consents-limits-and-events')}
        </a>
      </li>
      {pages.map(({ path, text }) => (
        <li key={path}>
          <a href={`/patients/${patientId}${path}`} aria-current={path === current ? 'page' : undefined}>
            {text}
          </a>
        </li>
      ))}
    </ul>
  </nav>
);
