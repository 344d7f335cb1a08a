import type { Metadata } from 'next';
import { demoSignInList } from '#server/demo-sign-ins.ts';
import { hasPasskeys } from '#server/passkeys-here.ts';
import { clinicHere } from '#server/phone-here.ts';
import { InOwnWords } from '#ui/patient/preferences/in-own-words.tsx';
import { CoverHours } from '#ui/shared/cover-hours.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { SignInForm } from '#ui/shared/sign-in/sign-in-form.tsx';
import { chosenOnPhone } from '../(patient)/chosen-on-phone.ts';

export const metadata: Metadata = { title: 'Sign in' };

const SignIn = async () => {
  const clinic = await clinicHere();
  return (
    <InOwnWords chosen={await chosenOnPhone()}>
      <PageFrame audience="public">
        <SignInForm hasPasskeys={hasPasskeys()} demo={demoSignInList()}>
          {clinic ? <CoverHours clinic={clinic} /> : null}
        </SignInForm>
      </PageFrame>
    </InOwnWords>
  );
};

export default SignIn;
