import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { ChoicesScreen } from '#ui/account/choices-screen.tsx';

export const metadata: Metadata = { title: 'Clinic choices' };

const ChoicesPage = async () => {
  const person = await requirePerson('clinician', 'administrator');
  const { admin } = await serverCaller();
  return (
    <AccountFrame person={person} current="/administration/choices">
      <ChoicesScreen
        list={await admin.choices.list()}
        zone={(await (await serverCaller()).account.me()).zone}
      />
    </AccountFrame>
  );
};

export default ChoicesPage;
