/** An address that leads nowhere, in the language chosen on this phone. The address itself is not repeated. */

import { ownPageGerman } from '#messages/de/pages/own-page.ts';
import { savingGerman } from '#messages/de/pages/saving.ts';
import { brokenWords } from '#messages/en/pages/broken.ts';
import { ownPageWords } from '#messages/en/pages/own-page.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { LinkButton } from '#ui/design-system/button.tsx';
import { PageFrame } from '#ui/design-system/page-frame.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';

export const LostPage = ({ language }: { readonly language: LanguageTag }) => {
  const words =
    language === 'de' ? { ...ownPageGerman, ...savingGerman } : { ...ownPageWords, ...brokenWords };
  return (
    <PageFrame audience="public" skipText={words['skip.main']}>
      <div className="stack" lang={language}>
        <PageHeading>{words['lost.title']}</PageHeading>
        <p>{words['lost.text']}</p>
        <LinkButton href="/">{words['lost.home']}</LinkButton>
      </div>
    </PageFrame>
  );
};
