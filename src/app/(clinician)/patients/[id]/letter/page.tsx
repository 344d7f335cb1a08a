import type { Metadata } from 'next';
import { letterInWords } from '#ui/clinician/documents/document-in-words.ts';
import { recordPage } from '../../../clinic-page.ts';
import { DocumentFrame, type DocumentPageProps, documentFacts } from '../../../document-frame.tsx';

export const metadata: Metadata = { title: 'Letter at the end of care' };

const LetterPage = async ({ params, searchParams }: DocumentPageProps) => {
  const at = await recordPage(params);
  const facts = await documentFacts(at, searchParams);
  return <DocumentFrame at={at} document={letterInWords(facts, at.day)} />;
};

export default LetterPage;
