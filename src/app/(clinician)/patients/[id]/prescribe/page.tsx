import type { Metadata } from 'next';
import { choiceAddress } from '#ui/clinician/prescribing/choose/choice-address.ts';
import { PrescribeScreen } from '#ui/clinician/prescribing/prescribe-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Prescribe' };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

const PrescribePage = async ({ params, searchParams }: Props) => {
  const page = await recordPage(params);
  const { person, clinician, patient, clock } = page;
  const at = choiceAddress(await searchParams, patient.profile);
  const patientId = patient.id;
  const { isAll: _, exerciseId: __, side: ___, line, template: templateId, on = 'saved', ...search } = at;
  return (
    <FramedRecord at={page} section="/prescribe">
      <PrescribeScreen
        {...{ patient, at, clock }}
        outcomes={await clinician.screening.outcomes({ patientId })}
        measurements={await clinician.measurements.list({ patientId })}
        choices={await clinician.prescriptions.choices({ patientId, search })}
        prescriptions={await clinician.prescriptions.list({ patientId })}
        machines={await clinician.machines.list()}
        danger={await clinician.danger.get({ patientId })}
        templates={(await clinician.templates.list()).filter(({ withdrawn }) => !withdrawn)}
        template={templateId ? await clinician.templates.proposed({ patientId, templateId, on }) : null}
        earlier={line ? await clinician.review.earlierDoses({ patientId, itemId: line }) : []}
        typedBefore={(await clinician.drafts.get({ patientId, form: 'prescribe' }))?.typed ?? {}}
        signer={person.name}
      />
    </FramedRecord>
  );
};

export default PrescribePage;
