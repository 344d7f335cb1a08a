import type { Metadata } from 'next';
import { say } from '#messages/en/staff/papers/letters.ts';
import { listFrom, listText } from '#ui/clinician/forms/sent/sent-form.ts';
import { LettersScreen } from '#ui/clinician/letters/letters-screen.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<Readonly<Partial<Record<'again' | 'note' | 'notes', string | string[]>>>>;
}

const LettersPage = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { clinician, patient, clock } = at;
  const patientId = patient.id;
  const asked = await searchParams;
  const wanted = new Set([...[asked.note ?? []].flat(), ...listFrom([asked.notes].flat()[0])]);
  const { notes } = await clinician.visitNotes.list({ patientId });
  const chosen = notes.filter(({ id }) => wanted.has(id)).map(({ id }) => id);
  const answer = await clinician.letters.list({ patientId });
  return (
    <FramedRecord at={at} section="/care/letters">
      <LettersScreen
        patientId={patientId}
        answer={answer}
        again={answer.addressees[Number([asked.again].flat()[0] ?? Number.NaN)] ?? null}
        notes={listText(chosen.slice(0, 20))}
        notesCount={Math.min(chosen.length, 20)}
        clock={clock}
      />
    </FramedRecord>
  );
};

export default LettersPage;
