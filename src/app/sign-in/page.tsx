import type { Metadata } from 'next';
import { demoSignInList } from '#server/demo-sign-ins.ts';
import { hasPasskeys } from '#server/passkeys-here.ts';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { SignInForm } from '#ui/shared/sign-in/sign-in-form.tsx';

export const metadata: Metadata = { title: 'Sign in' };

const SignIn = () => (
  <PageFrame audience="public">
    <SignInForm hasPasskeys={hasPasskeys()} demo={demoSignInList()} />
  </PageFrame>
);

export default SignIn;
