/** The frame of a page that everybody has: a patient reads it in the own language, staff in English. */

import type { ReactNode } from 'react';
import type { Person } from '#api/person.ts';
import { OwnAccountFrame } from '#ui/patient/account/own-account-frame.tsx';
import { chosenOnPhone } from '../(patient)/chosen-on-phone.ts';
import { StaffFrame } from './staff-frame.tsx';

export interface OwnFrameProps {
  readonly person: Person;
  readonly children: ReactNode;
}

export const OwnFrame = async ({ person, children }: OwnFrameProps) =>
  person.role === 'patient' ? (
    <OwnAccountFrame chosen={await chosenOnPhone()}>{children}</OwnAccountFrame>
  ) : (
    <StaffFrame person={person} current="/account">
      {children}
    </StaffFrame>
  );
