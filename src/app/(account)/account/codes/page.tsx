import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { say } from '#messages/en/staff/account.ts';
import { requireAnyone, serverCaller } from '#server/http/caller.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { CodesChange } from '#ui/account/codes-change.tsx';
import { CodesSetUp } from '#ui/account/codes-set-up.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';

export const metadata: Metadata = { title: say('codes') };

const CodesPage = async () => {
  const person = await requireAnyone();
  if (person.role === 'patient' || person.setUp === 'passphrase') redirect('/account');
  const me = await (await serverCaller()).account.me();
  return (
    <AccountFrame person={person} current="/account">
      <div className="stack-wide">
        <PageHeading caption={say('own-sign-in')}>{say('codes')}</PageHeading>
        {me.hasCodes ? <CodesChange mayStop={!me.codesRequired} /> : <CodesSetUp />}
      </div>
    </AccountFrame>
  );
};

export default CodesPage;
