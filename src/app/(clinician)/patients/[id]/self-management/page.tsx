import type { Metadata } from 'next';
import { say } from '#messages/en/staff/documents.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { paperAddress } from '#ui/clinician/documents/paper-link.tsx';
import { recordPage } from '../../../clinic-page.ts';
import {
  DocumentFrame,
  type DocumentPageProps,
  documentsHere,
  languageOf,
} from '../../../document-frame.tsx';

export const metadata: Metadata = { title: say('handout-title') };

const nameOf = (tag: LanguageTag): string => new Intl.DisplayNames('en', { type: 'language' }).of(tag) ?? tag;

const SelfManagementPage = async ({ params, searchParams }: DocumentPageProps) => {
  const at = await recordPage(params);
  const here = await documentsHere(at, searchParams);
  const language = languageOf((await searchParams).language);
  const addressIn = (tag: LanguageTag) =>
    `/patients/${at.patient.id}/self-management?${new URLSearchParams({ episode: here?.facts.episode.id ?? '', language: tag })}`;
  const pdf = paperAddress('self-management', at.patient.id, {
    episode: here?.facts.episode.id ?? '',
    language,
  });
  const others = languages.filter(({ tag }) => tag !== language);
  return (
    <DocumentFrame at={at} pdf={pdf} document={here?.selfManagement ?? null} language={language}>
      {others.map(({ tag }) => (
        <p key={tag} className="screen-only">
          <a href={addressIn(tag)}>
            {tag === 'en'
              ? say('handout-in', { language: nameOf(tag) })
              : say('handout-in-unreviewed', { language: nameOf(tag) })}
          </a>
        </p>
      ))}
    </DocumentFrame>
  );
};

export default SelfManagementPage;
