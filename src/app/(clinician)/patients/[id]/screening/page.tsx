import type { Metadata } from 'next';
import { ScreeningScreen } from '#ui/clinician/screening/screening-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Screening' };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly whole?: string | string[] }>;
}

const ScreeningPage = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { clinician, patient, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/screening">
      <ScreeningScreen
        patientId={patientId}
        screening={await clinician.screening.sheet({ patientId })}
        outcomes={await clinician.screening.outcomes({ patientId })}
        day={day}
        isWhole={(await searchParams).whole !== undefined}
      />
      <CorrectionsOn {...{ clinician, patientId, day }} subjects={['screening', 'clearance']} />
    </FramedRecord>
  );
};

export default ScreeningPage;
