import type { Metadata } from 'next';
import { NotesScreen } from '#ui/clinician/notes/notes-screen.tsx';
import { askedText } from '../../../../../asked-text.ts';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { CorrectionsOn } from '../../../../corrections-on.tsx';
import { FramedRecord } from '../../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Notes' };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly wanted?: string | string[] }>;
}

const NotesPage = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { clinician, patient, person, clock, day } = at;
  const patientId = patient.id;
  const asked = (await searchParams).wanted;
  const wanted = askedText(asked);
  const draft = await clinician.drafts.get({ patientId, form: 'visit-note' });
  return (
    <FramedRecord at={at} section="/care/notes">
      <NotesScreen
        patientId={patientId}
        answer={await clinician.visitNotes.list({ patientId, wanted })}
        wanted={wanted}
        clock={clock}
        day={day}
        signer={person.name}
        draft={draft?.typed ?? null}
      />
      <CorrectionsOn {...{ clinician, patientId, day }} subjects={['note']} />
    </FramedRecord>
  );
};

export default NotesPage;
