import { redirect } from 'next/navigation';
import { clinicHere, phoneHere } from '#server/sign-in/phone-here.ts';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { EnrolFrame } from '#ui/patient/account/enrol-frame.tsx';
import { PinForm } from '#ui/patient/account/pin-form.tsx';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('pin.title');

const PinPage = async () => {
  const state = await phoneHere();
  if (state === 'none') redirect('/sign-in');
  if (state === 'choose-pin') redirect('/enrol');
  const clinic = await clinicHere();
  return (
    <EnrolFrame chosen={await chosenOnPhone()}>
      <div className="stack-wide">
        <PinForm isSpent={state === 'too-many-tries'} />
        {clinic ? <MonitoringHours clinic={clinic} /> : null}
      </div>
    </EnrolFrame>
  );
};

export default PinPage;
