/** The frame of the pages about a staff member's own sign-in and about the clinic's people. */
import type { ReactNode } from 'react';
import type { Role } from '#api/person.ts';
import { say } from '#messages/en/staff/account.ts';
import { say as clinic } from '#messages/en/staff/administration/clinic.ts';
import { say as figures } from '#messages/en/staff/administration/figures.ts';
import { say as incidents } from '#messages/en/staff/administration/incidents.ts';
import { say as machines } from '#messages/en/staff/administration/machines.ts';
import { say as programs } from '#messages/en/staff/administration/programs.ts';
import { say as settings } from '#messages/en/staff/administration/settings.ts';
import { say as administration } from '#messages/en/staff/administration.ts';
import { SignOut } from '#ui/account/sign-out.tsx';
import { PageFrame } from '#ui/design-system/page-frame.tsx';

export interface AccountFrameProps {
  readonly person: {
    readonly role: Role;
    readonly administers: boolean;
  };
  readonly current: string;
  readonly children: ReactNode;
}

const clinical = [
  { href: '/worklist', text: 'Worklist' },
  { href: '/patients', text: 'Patients' },
];
const administered = [
  { href: '/administration', text: administration('staff-and-sites') },
  { href: '/administration/settings', text: settings('title') },
  { href: '/administration/care', text: clinic('page-title') },
  { href: '/administration/machines', text: machines('title') },
  { href: '/administration/programs', text: programs('title') },
];
const ofStaff = [
  { href: '/incidents', text: incidents('title') },
  { href: '/administration/figures', text: figures('title') },
];
const frontDesk = [{ href: '/reception', text: 'Reception' }];
const own = [{ href: '/account', text: say('own-sign-in') }];

export const AccountFrame = ({ person, current, children }: AccountFrameProps) => {
  const links = [
    ...(person.role === 'clinician' ? clinical : []),
    ...(person.role === 'reception' ? frontDesk : []),
    ...(person.administers ? administered : []),
    ...(person.role === 'clinician' || person.administers ? ofStaff : []),
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
