/** An address that leads nowhere, in the language chosen on this phone. The address itself is not repeated. */
import type { LanguageTag } from '#messages/languages.ts';
import { LinkButton } from '#ui/design-system/button.tsx';
import { PageFrame } from '#ui/design-system/page-frame.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';

export interface LostPageProps {
  readonly language: LanguageTag;
  readonly word: (key: 'skip.main' | 'lost.title' | 'lost.text' | 'lost.home') => string;
}

export const LostPage = ({ language, word }: LostPageProps) => (
  <PageFrame audience="public" skipText={word('skip.main')}>
    <div className="stack" lang={language}>
      <PageHeading>{word('lost.title')}</PageHeading>
      <p>{word('lost.text')}</p>
      <LinkButton href="/">{word('lost.home')}</LinkButton>
    </div>
  </PageFrame>
);
