'use client';
/** A long list narrowed by what is typed; what it shows was drawn on the server. */
import { type ReactNode, useState } from 'react';
import { hasWords } from '#core/word-search.ts';
import { say } from '#messages/en/staff/calculations.ts';
import { sameMeaning } from '#messages/search/same-meaning.ts';
import { SearchForm } from '#ui/design-system/search/search-form.tsx';

interface Searched {
  readonly key: string;
  /** What is searched. */
  readonly text: string;
  readonly shown: ReactNode;
}

export interface SearchedSection {
  readonly key: string;
  readonly heading: string | null;
  readonly items: readonly Searched[];
}

export interface SearchedListProps {
  readonly action: string;
  readonly label: string;
  readonly hint: string;
  /** As the address names them. */
  readonly start: string;
  readonly sections: readonly SearchedSection[];
  /** Class of what holds the sections. */
  readonly className: string;
}

const Section = ({ section }: { readonly section: SearchedSection }) => (
  <section className="stack-close">
    {section.heading ? <h2>{section.heading}</h2> : null}
    <ul className="plain-list">
      {section.items.map(({ key, shown }) => (
        <li key={key}>{shown}</li>
      ))}
    </ul>
  </section>
);

export const SearchedList = ({ sections, start, className, ...form }: SearchedListProps) => {
  const [words, setWords] = useState(start);
  const found = sections
    .map((section) => ({
      ...section,
      items: section.items.filter(({ text }) =>
        hasWords(`${text} ${section.heading ?? ''}`, words, sameMeaning),
      ),
    }))
    .filter(({ items }) => items.length > 0);
  const count = found.reduce((sum, { items }) => sum + items.length, 0);
  const said = count === 0 ? say('search.none', { words }) : say('search.found', { count, words });
  return (
    <div className="stack">
      <SearchForm {...form} go={say('search.go')} words={words} onWords={setWords} />
      <p role="status" className={words.trim() === '' ? 'visually-hidden' : 'soft'}>
        {words.trim() === '' ? '' : said}
      </p>
      <div className={className}>
        {found.map((section) => (
          <Section key={section.key} section={section} />
        ))}
      </div>
    </div>
  );
};
