'use client';
import { useEffect, useState } from 'react';
import { brokenWords } from '#messages/en/pages/broken.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PageFrame } from '#ui/design-system/page-frame.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';

/** The language the page was shown in; its words come only when something has broken. */
const useBrokenWords = (): Readonly<Record<keyof typeof brokenWords, string>> => {
  const [words, setWords] = useState<Readonly<Record<keyof typeof brokenWords, string>>>(brokenWords);
  useEffect(() => {
    if (document.documentElement.lang !== 'de') return;
    void import('#messages/de/pages/saving.ts')
      .then(({ savingGerman }) => setWords(savingGerman))
      // Without them the page stays in English.
      .catch(() => undefined);
  }, []);
  return words;
};

/** Nothing of the fault itself is shown: it may hold what a person typed. */
const Broken = ({ reset }: { readonly error: Error; readonly reset: () => void }) => {
  const words = useBrokenWords();
  return (
    <PageFrame audience="public">
      <div className="stack">
        <PageHeading>{words['broken.title']}</PageHeading>
        <p>{words['broken.text']}</p>
        <Button onClick={reset}>{words['broken.again']}</Button>
      </div>
    </PageFrame>
  );
};

export default Broken;
