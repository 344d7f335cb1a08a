import type { Metadata } from 'next';
import { say } from '#messages/en/staff/documents.ts';
import { letterInWords } from '#ui/clinician/documents/document-in-words.ts';
import { paperAddress } from '#ui/clinician/documents/paper-link.tsx';
import { recordPage } from '../../../clinic-page.ts';
import { DocumentFrame, type DocumentPageProps, documentsHere } from '../../../document-frame.tsx';

export const metadata: Metadata = { title: say('letter-title') };

const LetterPage = async ({ params, searchParams }: DocumentPageProps) => {
  const at = await recordPage(params);
  const here = await documentsHere(at, searchParams);
  const pdf = paperAddress('discharge', at.patient.id, { episode: here?.facts.episode.id ?? '' });
  return <DocumentFrame at={at} pdf={pdf} document={letterInWords(here?.facts ?? null, at.day)} />;
};

export default LetterPage;
