import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { clinicHere, phoneHere } from '#server/phone-here.ts';
import { PinForm } from '#ui/account/pin-form.tsx';
import { InOwnWords } from '#ui/patient/preferences/in-own-words.tsx';
import { CoverHours } from '#ui/shared/cover-hours.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import '#ui/words/account.ts';
import { say } from '#ui/words.ts';
import { chosenOnPhone } from '../../(patient)/chosen-on-phone.ts';

export const metadata: Metadata = { title: say('pin.title') };

const PinPage = async () => {
  const state = await phoneHere();
  if (state === 'none') redirect('/sign-in');
  if (state === 'choose-pin') redirect('/join');
  const clinic = await clinicHere();
  return (
    <InOwnWords chosen={await chosenOnPhone()}>
      <PageFrame audience="public">
        <div className="stack-wide">
          <PinForm isSpent={state === 'too-many-tries'} />
          {clinic ? <CoverHours clinic={clinic} /> : null}
        </div>
      </PageFrame>
    </InOwnWords>
  );
};

export default PinPage;
