/** The corrections of what is entered on one page. */
import 'server-only';
import type { serverCaller } from '#server/http/caller.ts';
import {
  CorrectionsSection,
  type CorrectionsSectionProps,
  CorrectionsWaiting,
} from '#ui/clinician/corrections/corrections-section.tsx';

type Clinician = Awaited<ReturnType<typeof serverCaller>>['clinician'];

interface Props extends Pick<CorrectionsSectionProps, 'patientId' | 'day'> {
  readonly clinician: Clinician;
  readonly subjects: readonly CorrectionsSectionProps['of'][number]['subject'][];
}

export const CorrectionsOn = async ({ clinician, subjects, patientId, day }: Props) => {
  const corrections = await clinician.corrections.list({ patientId });
  const of = await Promise.all(
    subjects.map(async (subject) => ({
      subject,
      rows: await clinician.corrections.entries({ patientId, subject }),
    })),
  );
  return (
    <CorrectionsSection
      patientId={patientId}
      day={day}
      of={of}
      corrections={corrections.filter((row) => subjects.includes(row.subject))}
    />
  );
};

/** On the first page of a record: corrections whose new plan nobody has seen yet, of whatever was entered. */
export const WaitingCorrections = async ({
  clinician,
  patientId,
}: Pick<Props, 'clinician' | 'patientId'>) => (
  <CorrectionsWaiting patientId={patientId} corrections={await clinician.corrections.list({ patientId })} />
);
