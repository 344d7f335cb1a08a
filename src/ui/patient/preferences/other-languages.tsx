'use client';
/** Another language before anybody has signed in: each is offered by its own name. */
import { useEffect, useState } from 'react';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { Button } from '#ui/design-system/button.tsx';
import { choose, chosenHere } from './chosen.ts';

export const OtherLanguages = () => {
  const [now, setNow] = useState<LanguageTag | null>(null);
  useEffect(() => setNow(chosenHere().language), []);
  const take = (tag: LanguageTag) => {
    choose('language', tag);
    window.location.reload();
  };
  return (
    <div className="row">
      {languages
        .filter(({ tag }) => now !== null && tag !== now)
        .map(({ tag, name }) => (
          <Button key={tag} tone="quiet" onClick={() => take(tag)}>
            <span lang={tag}>{name}</span>
          </Button>
        ))}
    </div>
  );
};
