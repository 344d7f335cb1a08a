/** What the pages of papers share: which episode of care the address names, and the frame around the paper. */

import { type LanguageTag, languages } from '#messages/languages.ts';
import { DocumentView, type DocumentViewProps } from '#ui/clinician/documents/document-view.tsx';
import type { AtRecord, RecordParams } from './clinic-page.ts';
import { FramedRecord } from './framed-record.tsx';

export interface DocumentPageProps {
  readonly params: RecordParams;
  readonly searchParams: Promise<{
    readonly episode?: string | string[];
    readonly language?: string | string[];
  }>;
}

/** The language the address asks for; English where it asks for none of ours. */
export const languageOf = (asked: unknown): LanguageTag =>
  languages.find(({ tag }) => tag === asked)?.tag ?? 'en';

/** null where the address names no episode of care. */
export const documentsHere = async (
  { clinician, patient }: AtRecord,
  searchParams: DocumentPageProps['searchParams'],
) => {
  const { episode, language } = await searchParams;
  if (typeof episode !== 'string') return null;
  const asked = { patientId: patient.id, episodeId: episode.slice(0, 64) };
  return clinician.documents.get({ ...asked, language: languageOf(language) });
};

type DocumentFrameProps = Omit<DocumentViewProps, 'patientId'> & { readonly at: AtRecord };

export const DocumentFrame = ({ at, ...document }: DocumentFrameProps) => (
  <FramedRecord at={at} section="/care/episode">
    <DocumentView patientId={at.patient.id} {...document} />
  </FramedRecord>
);
