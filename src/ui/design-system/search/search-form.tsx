'use client';
/** A search that narrows what stands on the page; without a script it asks the page by its address. */
import { Button } from '../button.tsx';
import { TextField } from '../text-field.tsx';

export interface SearchFormProps {
  readonly action: string;
  readonly label: string;
  readonly hint: string;
  /** Of the button, which only a browser without scripts shows. */
  readonly go: string;
  readonly words: string;
  readonly onWords: (words: string) => void;
}

/** The address follows what is typed, so that a reload or a link shows the same. */
const follow = (words: string): void => {
  const asked = words.trim() === '' ? '' : `?${new URLSearchParams({ words })}`;
  window.history.replaceState(window.history.state, '', `${window.location.pathname}${asked}`);
};

export const SearchForm = ({ action, label, hint, go, words, onWords }: SearchFormProps) => (
  <search>
    <form method="get" action={action} onSubmit={(event) => event.preventDefault()}>
      <TextField
        name="words"
        type="search"
        label={label}
        hint={hint}
        value={words}
        maxLength={100}
        autoComplete="off"
        onChange={(event) => {
          onWords(event.target.value);
          follow(event.target.value);
        }}
      />
      <noscript>
        <Button type="submit" tone="plain">
          {go}
        </Button>
      </noscript>
    </form>
  </search>
);
