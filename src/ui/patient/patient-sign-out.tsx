'use client';
/** Signing out from any of the patient's pages leaves nothing readable of them on this phone. */
import { SignOut } from '#ui/account/sign-out.tsx';
import { forgetPeople } from './phone/own-store.ts';

export const PatientSignOut = () => <SignOut onLeave={forgetPeople} />;
