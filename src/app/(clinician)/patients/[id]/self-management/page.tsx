import type { Metadata } from 'next';
import { summaryInWords } from '#ui/clinician/documents/document-in-words.ts';
import type { DocumentLanguage } from '#ui/clinician/documents/document-view.tsx';
import { wordsIn } from '#ui/language/in-language.ts';
import { recordPage } from '../../../clinic-page.ts';
import { DocumentFrame, type DocumentPageProps, documentFacts } from '../../../document-frame.tsx';

export const metadata: Metadata = { title: 'Self-management handout' };

const SelfManagementPage = async ({ params, searchParams }: DocumentPageProps) => {
  const at = await recordPage(params);
  const facts = await documentFacts(at, searchParams);
  const { language: asked } = await searchParams;
  const tag = asked === 'de' ? 'de' : 'en';
  const { translate } = await wordsIn(tag);
  const language: DocumentLanguage | undefined = translate && { tag, translate };
  const other = new URLSearchParams({
    episode: facts?.episode.id ?? '',
    language: language ? 'en' : 'de',
  });
  return (
    <DocumentFrame at={at} document={summaryInWords(facts, translate, tag)} language={language}>
      <p className="screen-only">
        <a href={`/patients/${at.patient.id}/self-management?${other}`}>
          {language ? 'The handout in English' : 'The handout in German (not yet reviewed)'}
        </a>
      </p>
    </DocumentFrame>
  );
};

export default SelfManagementPage;
