'use client';
/** In which language people of the hour are asked for warning signs: chosen on the page, for all of them. */
import { createContext, type ReactNode, useContext, useState } from 'react';
import { say } from '#messages/en/staff/groups/hour.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { Button } from '#ui/design-system/button.tsx';

interface AskedIn {
  readonly tag: LanguageTag;
  readonly choose: (tag: LanguageTag) => void;
}

const Asked = createContext<AskedIn>({ tag: 'en', choose: () => undefined });

export const useAskedIn = (): LanguageTag => useContext(Asked).tag;

export const AskedInLanguage = ({ children }: { readonly children: ReactNode }) => {
  const [tag, choose] = useState<LanguageTag>('en');
  return <Asked value={{ tag, choose }}>{children}</Asked>;
};

export const LanguageChoice = () => {
  const { tag, choose } = useContext(Asked);
  return (
    <p className="small soft">
      {say('signs.language')}{' '}
      {languages.map((one) => (
        <Button
          key={one.tag}
          tone="quiet"
          lang={one.tag}
          aria-pressed={one.tag === tag}
          onClick={() => choose(one.tag)}
        >
          {one.tag === tag ? <strong>{one.name}</strong> : one.name}
        </Button>
      ))}
    </p>
  );
};
