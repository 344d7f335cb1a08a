import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { OpenedList } from '#ui/account/opened-list.tsx';
import { say } from '#ui/words.ts';

export const metadata: Metadata = { title: say('opened.title') };

const WhoOpenedPage = async () => {
  const person = await requirePerson('patient');
  const { day, lines } = await (await serverCaller()).patient.access.list();
  return (
    <AccountFrame person={person} current="/who-opened">
      <OpenedList day={day} lines={lines} />
    </AccountFrame>
  );
};

export default WhoOpenedPage;
