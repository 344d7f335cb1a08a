import type { Metadata } from 'next';
import { phoneHere } from '#server/phone-here.ts';
import { JoinForm } from '#ui/account/join-form.tsx';
import { InOwnWords } from '#ui/patient/preferences/in-own-words.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import '#ui/words/account.ts';
import { say } from '#ui/words.ts';
import { chosenOnPhone } from '../../(patient)/chosen-on-phone.ts';

export const metadata: Metadata = { title: say('join.title') };

const JoinPage = async () => (
  <InOwnWords chosen={await chosenOnPhone()}>
    <PageFrame audience="public">
      <JoinForm startsAtPin={(await phoneHere()) === 'choose-pin'} />
    </PageFrame>
  </InOwnWords>
);

export default JoinPage;
