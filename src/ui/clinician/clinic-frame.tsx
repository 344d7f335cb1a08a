/** The frame of the clinic's pages: four places, who is signed in, and what the product is not. */
import type { ReactNode } from 'react';
import { say } from '#messages/en/staff/clinic.ts';
import { PageFrame } from '#ui/design-system/page-frame.tsx';
import { SignOut } from './sign-out.tsx';

const places = [
  { href: '/worklist', text: 'Worklist' },
  { href: '/patients', text: 'Patients' },
  { href: '/groups', text: say('group-hours') },
  { href: '/calculations', text: 'Calculations' },
] as const;

export interface ClinicFrameProps {
  readonly place: (typeof places)[number]['href'] | null;
  readonly name: string;
  readonly children: ReactNode;
}

export const ClinicFrame = ({ place, name, children }: ClinicFrameProps) => (
  <PageFrame
    audience="clinic"
    homeHref="/worklist"
    links={places.map((link) => ({ ...link, isCurrent: link.href === place }))}
    account={
      <span className="account">
        <a className="soft" href="/account">
          {name}
        </a>{' '}
        <SignOut />
      </span>
    }
    foot={<p>{say('loadgate-proposes')}</p>}
  >
    {children}
  </PageFrame>
);
