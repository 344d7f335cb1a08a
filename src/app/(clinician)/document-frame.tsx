/** What the pages of papers share: which episode of care the address names, and the frame around the paper. */

import { type LanguageTag, languages } from '#messages/languages.ts';
import { DocumentView, type DocumentViewProps } from '#ui/clinician/documents/document-view.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import type { RecordParams, recordPage } from './clinic-page.ts';
import { CoveredFrame } from './covered-frame.tsx';

export interface DocumentPageProps {
  readonly params: RecordParams;
  readonly searchParams: Promise<{
    readonly episode?: string | string[];
    readonly language?: string | string[];
  }>;
}

type AtRecord = Awaited<ReturnType<typeof recordPage>>;

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
  <CoveredFrame place="/patients" name={at.person.name}>
    <RecordFrame patient={at.patient} day={at.day} section="/care">
      <DocumentView patientId={at.patient.id} {...document} />
    </RecordFrame>
  </CoveredFrame>
);
