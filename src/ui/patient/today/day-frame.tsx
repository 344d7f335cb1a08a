'use client';
/** The frame of the patient’s day: with it the page has its words before they are said in another language. */
import { type OwnPageProps, PatientFrame } from '#ui/patient/patient-frame.tsx';
import '../words.ts';

export const DayFrame = (props: OwnPageProps) => <PatientFrame current="/today" {...props} />;
