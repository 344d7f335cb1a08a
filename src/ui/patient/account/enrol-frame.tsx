'use client';
/** The frame of setting up a phone, and of its PIN: with it the page has its words before they are said in another language. */
import { PublicFrame, type PublicFrameProps } from '#ui/patient/public-frame.tsx';
import './words.ts';

export const EnrolFrame = (props: PublicFrameProps) => <PublicFrame {...props} />;
