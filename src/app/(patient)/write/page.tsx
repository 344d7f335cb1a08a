import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import { WriteForm } from '#ui/patient/messages/write-form.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('write.title');

const Write = async () => {
  await requirePerson('patient');
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/write">
      <WriteForm mine={await (await serverCaller()).patient.messages.get()} />
      <TypedEarly />
    </PatientFrame>
  );
};

export default Write;
