import { redirect } from 'next/navigation';
import { demoSignInList } from '#server/sign-in/demo-sign-ins.ts';
import { hasPasskeys } from '#server/sign-in/passkeys-here.ts';
import { clinicHere, phoneHere } from '#server/sign-in/phone-here.ts';
import { SignInForm } from '#ui/account/sign-in/sign-in-form.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import { SignInFrame } from '#ui/patient/account/sign-in-frame.tsx';
import { chosenOnPhone, titled } from '../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('sign-in.title');

interface SignInProps {
  readonly searchParams: Promise<{ readonly with?: string }>;
}

const SignIn = async ({ searchParams }: SignInProps) => {
  const isAskedFor = (await searchParams).with === 'passphrase';
  if (!isAskedFor && (await phoneHere()) !== 'none') redirect('/pin');
  const clinic = await clinicHere();
  return (
    <SignInFrame chosen={await chosenOnPhone()}>
      <SignInForm hasPasskeys={hasPasskeys()} demo={demoSignInList()}>
        {clinic ? <MonitoringHours clinic={clinic} /> : null}
      </SignInForm>
      <TypedEarly />
    </SignInFrame>
  );
};

export default SignIn;
