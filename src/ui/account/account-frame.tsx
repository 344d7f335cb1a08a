/** The frame of the pages about a staff member's own sign-in and about the clinic's people. */
import type { ReactNode } from 'react';
import { SignOut } from '#ui/account/sign-out.tsx';
import { PageFrame } from '#ui/design-system/page-frame.tsx';

export interface AccountFrameProps {
  readonly person: {
    readonly role: 'clinician' | 'administrator' | 'patient';
    readonly administers: boolean;
  };
  readonly current: string;
  readonly children: ReactNode;
}

const clinical = [
  { href: '/worklist', text: 'Worklist' },
  { href: '/patients', text: 'Patients' },
];
const administration = [
  { href: '/administration', text: 'Staff and sites' },
  { href: '/administration/settings', text: 'Clinic settings' },
  { href: '/administration/care', text: 'Covering clinician, urgent number and consents' },
];
const own = [{ href: '/account', text: 'Your sign-in' }];

export const AccountFrame = ({ person, current, children }: AccountFrameProps) => {
  const links = [
    ...(person.role === 'clinician' ? clinical : []),
    ...(person.administers ? administration : []),
    ...own,
  ];
  return (
    <PageFrame
      audience="clinic"
      homeHref="/"
      links={links.map((link) => ({ ...link, isCurrent: link.href === current }))}
      account={<SignOut />}
    >
      {children}
    </PageFrame>
  );
};
