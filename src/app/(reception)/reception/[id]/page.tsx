import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { say } from '#messages/en/staff/reception/reception.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { ReceptionPersonScreen } from '#ui/clinician/reception/reception-person.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { receptionPage } from '../../reception-page.ts';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: Promise<{ readonly id: string }>;
}

const isNobody = (error: unknown): boolean =>
  typeof error === 'object' &&
  error !== null &&
  'problem' in error &&
  (error.problem === 'not-found' || error.problem === 'refused');

const PersonPage = async ({ params }: Props) => {
  const { person, reception, clock } = await receptionPage();
  const { id: patientId } = await params;
  const found = await reception.person({ patientId }).catch((error: unknown) => {
    if (isNobody(error)) return notFound();
    throw error;
  });
  return (
    <AccountFrame person={person} current="/reception">
      <div className="stack-wide">
        <PageHeading caption={say('title')}>
          {found.givenName} {found.familyName}
        </PageHeading>
        <ReceptionPersonScreen person={found} clock={clock} />
      </div>
    </AccountFrame>
  );
};

export default PersonPage;
