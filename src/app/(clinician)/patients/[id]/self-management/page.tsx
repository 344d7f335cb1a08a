import type { Metadata } from 'next';
import { say } from '#messages/en/staff/documents.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { languageName, paperAddress } from '#ui/clinician/documents/paper-link.tsx';
import { recordPage } from '../../../clinic-page.ts';
import {
  DocumentFrame,
  type DocumentPageProps,
  documentsHere,
  languageOf,
} from '../../../document-frame.tsx';

export const metadata: Metadata = { title: say('handout-title') };

const SelfManagementPage = async ({ params, searchParams }: DocumentPageProps) => {
  const at = await recordPage(params);
  const here = await documentsHere(at, searchParams);
  const language = languageOf((await searchParams).language);
  const episode = here?.facts.episode.id ?? '';
  const addressIn = (tag: LanguageTag) =>
    `/patients/${at.patient.id}/self-management?${new URLSearchParams({ episode, language: tag })}`;
  const pdf = paperAddress('self-management', at.patient.id, { episode, language });
  const others = languages.filter(({ tag }) => tag !== language);
  return (
    <DocumentFrame at={at} pdf={pdf} document={here?.selfManagement ?? null} language={language}>
      {others.map(({ tag }) => (
        <p key={tag} className="screen-only">
          <a href={addressIn(tag)}>
            {tag === 'en'
              ? say('handout-in', { language: languageName(tag) })
              : say('handout-in-unreviewed', { language: languageName(tag) })}
          </a>
        </p>
      ))}
    </DocumentFrame>
  );
};

export default SelfManagementPage;
