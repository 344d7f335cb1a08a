import type { Metadata } from 'next';
import { say } from '#messages/en/staff/documents.ts';
import { languages } from '#messages/languages.ts';
import { letterInWords } from '#ui/clinician/documents/document-in-words.ts';
import { languageName, PaperLink, paperAddress } from '#ui/clinician/documents/paper-link.tsx';
import { recordPage } from '../../../clinic-page.ts';
import { DocumentFrame, type DocumentPageProps, documentsHere } from '../../../document-frame.tsx';

export const metadata: Metadata = { title: say('letter-title') };

const LetterPage = async ({ params, searchParams }: DocumentPageProps) => {
  const at = await recordPage(params);
  const here = await documentsHere(at, searchParams);
  const episode = here?.facts.episode.id ?? '';
  const pdf = paperAddress('discharge', at.patient.id, { episode });
  const others = languages.filter(({ tag }) => tag !== 'en');
  return (
    <DocumentFrame at={at} pdf={pdf} document={letterInWords(here?.facts ?? null, at.day)}>
      {others.map(({ tag }) => (
        <p key={tag} className="screen-only">
          <PaperLink kind="discharge" patientId={at.patient.id} asked={{ episode, language: tag }}>
            {say('as-pdf-in', { language: languageName(tag) })}
          </PaperLink>
        </p>
      ))}
    </DocumentFrame>
  );
};

export default LetterPage;
