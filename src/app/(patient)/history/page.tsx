import { isDay } from '#core/time/day.ts';
import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { HistoryFrame } from '#ui/patient/history/history-frame.tsx';
import { HistoryPage } from '#ui/patient/history/history-page.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('history.title');

interface HowItWentProps {
  readonly searchParams: Promise<{ readonly before?: string }>;
}

const HowItWent = async ({ searchParams }: HowItWentProps) => {
  await requirePerson('patient');
  const { before } = await searchParams;
  const asked = before !== undefined && isDay(before) ? { before } : {};
  return (
    <HistoryFrame chosen={await chosenOnPhone()}>
      <HistoryPage view={await (await serverCaller()).patient.history.get(asked)} />
    </HistoryFrame>
  );
};

export default HowItWent;
