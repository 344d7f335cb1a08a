import type { Metadata } from 'next';
import { withDefaults } from '#core/prescribing/prescribing-context.ts';
import { MeasurementsScreen } from '#ui/clinician/measurements/measurements-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Measurements' };

const measured = ['measurement', 'effusion-test', 'baseline'] as const;

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly kind?: string | string[] }>;
}

const MeasurementsPage = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { clinician, patient, day } = at;
  const [patientId, { kind }] = [patient.id, await searchParams];
  const { record, settings } = await clinician.review.get({ patientId, days: 14 });
  return (
    <FramedRecord at={at} section="/measurements">
      <MeasurementsScreen
        patientId={patientId}
        forms={await clinician.measurements.forms({ patientId })}
        rows={await clinician.measurements.list({ patientId })}
        effusions={record.effusions}
        day={day}
        pressureValidDays={withDefaults(settings)['occlusion-pressure-valid-days']!}
        open={typeof kind === 'string' ? kind : null}
      />
      <CorrectionsOn {...{ clinician, patientId, day }} subjects={measured} />
    </FramedRecord>
  );
};

export default MeasurementsPage;
