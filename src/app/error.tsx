'use client';
import { useEffect, useState } from 'react';
import { words as english } from '#messages/en/pages/broken.ts';
import type { Same } from '#messages/sentence.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PageFrame } from '#ui/design-system/page-frame.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';

/** The language the page was shown in; its words come only when something has broken. */
const useBrokenWords = (): ((key: keyof typeof english) => string) => {
  const [words, setWords] = useState<Same<typeof english>>(english);
  useEffect(() => {
    const { lang } = document.documentElement;
    if (lang === 'en') return;
    void import(`../messages/${lang}/pages/broken.ts`)
      .then((file: { readonly words: Same<typeof english> }) => setWords(file.words))
      // Without them the page stays in English.
      .catch(() => undefined);
  }, []);
  return (key) => {
    const sentence = words[key];
    return typeof sentence === 'string' ? sentence : sentence.other;
  };
};

/** Nothing of the fault itself is shown: it may hold what a person typed. */
const Broken = ({ reset }: { readonly error: Error; readonly reset: () => void }) => {
  const word = useBrokenWords();
  return (
    <PageFrame audience="public">
      <div className="stack">
        <PageHeading>{word('broken.title')}</PageHeading>
        <p>{word('broken.text')}</p>
        <Button onClick={reset}>{word('broken.again')}</Button>
      </div>
    </PageFrame>
  );
};

export default Broken;
