import { phoneHere } from '#server/sign-in/phone-here.ts';
import { EnrolFrame } from '#ui/patient/account/enrol-frame.tsx';
import { JoinForm } from '#ui/patient/account/join-form.tsx';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('join.title');

const JoinPage = async () => (
  <EnrolFrame chosen={await chosenOnPhone()}>
    <JoinForm startsAtPin={(await phoneHere()) === 'choose-pin'} />
  </EnrolFrame>
);

export default JoinPage;
