import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { phoneHere } from '#server/phone-here.ts';
import { PinForm } from '#ui/account/pin-form.tsx';
import { InOwnWords } from '#ui/patient/preferences/in-own-words.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { say } from '#ui/words.ts';
import { chosenOnPhone } from '../../(patient)/chosen-on-phone.ts';

export const metadata: Metadata = { title: say('pin.title') };

const PinPage = async () => {
  const state = await phoneHere();
  if (state === 'none') redirect('/sign-in');
  if (state === 'choose-pin') redirect('/join');
  return (
    <InOwnWords chosen={await chosenOnPhone()}>
      <PageFrame audience="public">
        <PinForm isSpent={state === 'too-many-tries'} />
      </PageFrame>
    </InOwnWords>
  );
};

export default PinPage;
