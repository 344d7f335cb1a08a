import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { HandoutFrame } from '#ui/patient/handout/handout-frame.tsx';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('handout.title');

const Handout = async () => {
  await requirePerson('patient');
  const { today, nutrition } = (await serverCaller()).patient;
  const view = await today.get();
  return (
    <HandoutFrame chosen={await chosenOnPhone()} place={view.clinic.name}>
      <HandoutPage view={view} nutrition={await nutrition.get()} />
    </HandoutFrame>
  );
};

export default Handout;
