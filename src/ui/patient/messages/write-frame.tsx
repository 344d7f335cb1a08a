'use client';
/** The frame of the page to write on: with it the page has its words before they are said in another language. */
import { type OwnPageProps, PatientFrame } from '#ui/patient/patient-frame.tsx';
import './words.ts';

export const WriteFrame = (props: OwnPageProps) => <PatientFrame current="/messages" {...props} />;
