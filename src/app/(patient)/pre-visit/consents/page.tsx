import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { Consents } from '#ui/patient/pre-visit/consents.tsx';
import { ConsentsFrame } from '#ui/patient/pre-visit/consents-frame.tsx';
import { chosenOnPhone, titled } from '../../chosen-on-phone.ts';

export const generateMetadata = titled('consent.title');

const MyConsents = async () => {
  await requirePerson('patient');
  return (
    <ConsentsFrame chosen={await chosenOnPhone()}>
      <Consents mine={await (await serverCaller()).patient.consents.get()} />
    </ConsentsFrame>
  );
};

export default MyConsents;
