'use client';
/** The frame of the page of consents: with it the page has its words before they are said in another language. */
import { type OwnPageProps, PatientFrame } from '#ui/patient/patient-frame.tsx';
import './consent-words.ts';

export const ConsentsFrame = (props: OwnPageProps) => (
  <PatientFrame current="/pre-visit/consents" {...props} />
);
