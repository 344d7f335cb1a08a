/** The frame of a page that everybody has: a patient reads it in the own language, staff in English. */

import type { ReactNode } from 'react';
import type { Person } from '#api/person.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { OwnAccountFrame } from '#ui/patient/account/own-account-frame.tsx';
import { chosenOnPhone } from '../(patient)/chosen-on-phone.ts';

export interface OwnFrameProps {
  readonly person: Person;
  readonly children: ReactNode;
}

export const OwnFrame = async ({ person, children }: OwnFrameProps) =>
  person.role === 'patient' ? (
    <OwnAccountFrame chosen={await chosenOnPhone()}>{children}</OwnAccountFrame>
  ) : (
    <AccountFrame person={person} current="/account">
      {children}
    </AccountFrame>
  );
