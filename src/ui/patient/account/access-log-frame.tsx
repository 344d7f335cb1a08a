'use client';
/** The frame of the page that says who opened the record: with it the page has its words before they are said in another language. */
import { type OwnPageProps, PatientFrame } from '#ui/patient/patient-frame.tsx';
import './access-log-words.ts';

export const AccessLogFrame = (props: OwnPageProps) => <PatientFrame current="/access-log" {...props} />;
