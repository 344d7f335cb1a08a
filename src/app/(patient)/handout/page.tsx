import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { HandoutFrame } from '#ui/patient/handout/handout-frame.tsx';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('handout.title');

const Handout = async () => {
  await requirePerson('patient');
  const view = await (await serverCaller()).patient.today.get();
  return (
    <HandoutFrame chosen={await chosenOnPhone()} place={view.clinic.name}>
      <HandoutPage view={view} />
    </HandoutFrame>
  );
};

export default Handout;
