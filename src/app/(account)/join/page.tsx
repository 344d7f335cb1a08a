import type { Metadata } from 'next';
import { phoneHere } from '#server/phone-here.ts';
import { JoinForm } from '#ui/account/join-form.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { say } from '#ui/words.ts';

export const metadata: Metadata = { title: say('join.title') };

const JoinPage = async () => (
  <PageFrame audience="public">
    <JoinForm startsAtPin={(await phoneHere()) === 'choose-pin'} />
  </PageFrame>
);

export default JoinPage;
