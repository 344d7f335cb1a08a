'use client';
/** The frame of the plan on one page: with it the page has its words before they are said in another language. */
import { type OwnPageProps, PatientFrame } from '#ui/patient/patient-frame.tsx';
import './words.ts';

export const HandoutFrame = (props: OwnPageProps) => <PatientFrame current="/handout" {...props} />;
