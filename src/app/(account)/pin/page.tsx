import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { phoneHere } from '#server/phone-here.ts';
import { PinForm } from '#ui/account/pin-form.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { say } from '#ui/words.ts';

export const metadata: Metadata = { title: say('pin.title') };

const PinPage = async () => {
  const state = await phoneHere();
  if (state === 'none') redirect('/sign-in');
  if (state === 'choose-pin') redirect('/join');
  return (
    <PageFrame audience="public">
      <PinForm isSpent={state === 'too-many-tries'} />
    </PageFrame>
  );
};

export default PinPage;
