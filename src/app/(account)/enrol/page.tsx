import { phoneHere } from '#server/sign-in/phone-here.ts';
import { EnrolForm } from '#ui/patient/account/enrol-form.tsx';
import { EnrolFrame } from '#ui/patient/account/enrol-frame.tsx';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('join.title');

const JoinPage = async () => (
  <EnrolFrame chosen={await chosenOnPhone()}>
    <EnrolForm startsAtPin={(await phoneHere()) === 'choose-pin'} />
  </EnrolFrame>
);

export default JoinPage;
