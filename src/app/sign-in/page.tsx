import { demoSignInList } from '#server/sign-in/demo-sign-ins.ts';
import { hasPasskeys } from '#server/sign-in/passkeys-here.ts';
import { clinicHere } from '#server/sign-in/phone-here.ts';
import { PublicFrame } from '#ui/patient/public-frame.tsx';
import { MonitoringHours } from '#ui/shared/cover-hours.tsx';
import { SignInForm } from '#ui/shared/sign-in/sign-in-form.tsx';
import { TypedEarly } from '#ui/shared/typed-early.tsx';
import { chosenOnPhone, titled } from '../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('sign-in.title');

const SignIn = async () => {
  const clinic = await clinicHere();
  return (
    <PublicFrame chosen={await chosenOnPhone()}>
      <SignInForm hasPasskeys={hasPasskeys()} demo={demoSignInList()}>
        {clinic ? <MonitoringHours clinic={clinic} /> : null}
      </SignInForm>
      <TypedEarly />
    </PublicFrame>
  );
};

export default SignIn;
