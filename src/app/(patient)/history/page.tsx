import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { HistoryFrame } from '#ui/patient/history/history-frame.tsx';
import { HistoryPage } from '#ui/patient/history/history-page.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('history.title');

const HowItWent = async () => {
  await requirePerson('patient');
  return (
    <HistoryFrame chosen={await chosenOnPhone()}>
      <HistoryPage view={await (await serverCaller()).patient.history.get()} />
    </HistoryFrame>
  );
};

export default HowItWent;
