import type { Metadata } from 'next';
import { withDefaults } from '#core/prescribing/prescribing-context.ts';
import { MeasurementsScreen } from '#ui/clinician/measurements/measurements-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Measurements' };

const measured = ['measurement', 'effusion-test', 'baseline'] as const;

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly kind?: string | string[] }>;
}

const MeasurementsPage = async ({ params, searchParams }: Props) => {
  const { person, clinician, patient, day } = await recordPage(params);
  const [patientId, { kind }] = [patient.id, await searchParams];
  const { record, settings } = await clinician.review.get({ patientId, days: 14 });
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/measurements">
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
      </RecordFrame>
    </CoveredFrame>
  );
};

export default MeasurementsPage;
