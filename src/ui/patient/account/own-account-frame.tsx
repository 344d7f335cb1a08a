'use client';
/** The frame of the own sign-in: with it the page has its words before they are said in another language. */
import { type OwnPageProps, PatientFrame } from '#ui/patient/patient-frame.tsx';
import '#ui/account/words.ts';
import './own-phones-words.ts';

export const OwnAccountFrame = (props: OwnPageProps) => <PatientFrame current="/account" {...props} />;
