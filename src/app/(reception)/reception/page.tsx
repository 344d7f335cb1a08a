import type { Metadata } from 'next';
import { say } from '#messages/en/staff/reception/reception.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { ReceptionScreen } from '#ui/clinician/reception/reception-screen.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { askedText } from '../../asked-text.ts';
import { receptionPage } from '../reception-page.ts';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly searchParams: Promise<{ readonly name?: string | string[] }>;
}

const ReceptionPage = async ({ searchParams }: Props) => {
  const { person, reception, day } = await receptionPage();
  const asked = (await searchParams).name;
  const name = askedText(asked);
  return (
    <AccountFrame person={person} current="/reception">
      <div className="stack-wide">
        <PageHeading>{say('title')}</PageHeading>
        <ReceptionScreen
          {...{ day, name }}
          found={name ? await reception.find({ name }) : null}
          appointments={name ? [] : await reception.appointments()}
        />
      </div>
    </AccountFrame>
  );
};

export default ReceptionPage;
