import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import { MessageForm } from '#ui/patient/messages/message-form.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('write.title');

const Write = async () => {
  await requirePerson('patient');
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/messages">
      <MessageForm mine={await (await serverCaller()).patient.messages.get()} />
      <TypedEarly />
    </PatientFrame>
  );
};

export default Write;
