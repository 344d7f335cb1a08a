import { phoneHere } from '#server/sign-in/phone-here.ts';
import { EnrolForm } from '#ui/patient/account/enrol-form.tsx';
import { PublicFrame } from '#ui/patient/public-frame.tsx';
import '#messages/en/pages/account.ts';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('join.title');

const JoinPage = async () => (
  <PublicFrame chosen={await chosenOnPhone()}>
    <EnrolForm startsAtPin={(await phoneHere()) === 'choose-pin'} />
  </PublicFrame>
);

export default JoinPage;
