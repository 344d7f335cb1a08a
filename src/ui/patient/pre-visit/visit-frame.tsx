'use client';
/** The frame of the questions before a visit: with it the page has its words before they are said in another language. */
import { type OwnPageProps, PatientFrame } from '#ui/patient/patient-frame.tsx';
import './words.ts';

export const VisitFrame = (props: OwnPageProps) => <PatientFrame current="/pre-visit" {...props} />;
