'use client';
/** The frame of signing in: with it the page has its words before they are said in another language. */
import { PublicFrame, type PublicFrameProps } from '#ui/patient/public-frame.tsx';
import '#ui/account/sign-in/words.ts';

export const SignInFrame = (props: PublicFrameProps) => <PublicFrame {...props} />;
