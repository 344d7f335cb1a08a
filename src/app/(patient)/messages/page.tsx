import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { phoneEntriesKey } from '#server/phone-entries.ts';
import { runtime } from '#server/runtime.ts';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import { MessageForm } from '#ui/patient/messages/message-form.tsx';
import { WriteFrame } from '#ui/patient/messages/write-frame.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('write.title');

const Write = async () => {
  const person = await requirePerson('patient');
  return (
    <WriteFrame chosen={await chosenOnPhone()}>
      <MessageForm
        mine={await (await serverCaller()).patient.messages.get()}
        ownerId={person.patientId ?? person.userId}
        clinicKey={phoneEntriesKey(runtime().keys, person.clinicId)}
      />
      <TypedEarly />
    </WriteFrame>
  );
};

export default Write;
