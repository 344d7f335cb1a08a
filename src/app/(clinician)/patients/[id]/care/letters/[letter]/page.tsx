import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { say } from '#messages/en/staff/papers/letters.ts';
import { LetterScreen } from '#ui/clinician/letters/letter-screen.tsx';
import { recordPage } from '../../../../../clinic-page.ts';
import { FramedRecord } from '../../../../../framed-record.tsx';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: Promise<{ readonly id: string; readonly letter: string }>;
}

const LetterPage = async ({ params }: Props) => {
  const at = await recordPage(params);
  const { clinician, patient, person } = at;
  const patientId = patient.id;
  const letterId = (await params).letter;
  const { letters } = await clinician.letters.list({ patientId });
  if (!letters.some((one) => one.letterId === letterId)) notFound();
  return (
    <FramedRecord at={at} section="/care/letters">
      <LetterScreen
        patientId={patientId}
        letter={await clinician.letters.get({ patientId, letterId })}
        signer={person.name}
      />
    </FramedRecord>
  );
};

export default LetterPage;
