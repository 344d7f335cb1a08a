'use client';
/** The frame of the history: with it the page has its words before they are said in another language. */
import { type OwnPageProps, PatientFrame } from '#ui/patient/patient-frame.tsx';
import './words.ts';

export const HistoryFrame = (props: OwnPageProps) => <PatientFrame current="/history" {...props} />;
