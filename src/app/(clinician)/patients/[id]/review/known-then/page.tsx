import type { Metadata } from 'next';
import { say } from '#messages/en/staff/review/known-then.ts';
import { KnownThenScreen } from '#ui/clinician/review/known-then/known-then-screen.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';
import { orRefused } from '../what-if/or-refused.ts';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const KnownThenPage = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { clinician, patient, clock, day } = at;
  const asked = String((await searchParams).at ?? '');
  const ask = () => clinician.replay.knownThen({ patientId: patient.id, at: asked });
  const { found, refused } = await orRefused(asked === '' ? null : ask);
  return (
    <FramedRecord at={at} section="/review">
      <KnownThenScreen
        patientId={patient.id}
        answer={found}
        refused={refused}
        start={`${day}T00:00`}
        zone={clock.zone}
      />
    </FramedRecord>
  );
};

export default KnownThenPage;
