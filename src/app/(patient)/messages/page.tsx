import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import { MessageForm } from '#ui/patient/messages/message-form.tsx';
import { WriteFrame } from '#ui/patient/messages/write-frame.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('write.title');

const Write = async () => {
  await requirePerson('patient');
  return (
    <WriteFrame chosen={await chosenOnPhone()}>
      <MessageForm mine={await (await serverCaller()).patient.messages.get()} />
      <TypedEarly />
    </WriteFrame>
  );
};

export default Write;
