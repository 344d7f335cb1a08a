'use client';
/** Arrow up and down move between the lines of a list; Tab works as anywhere. */
import type { KeyboardEvent, ReactNode } from 'react';

const moves: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };

const move = (event: KeyboardEvent<HTMLOListElement>) => {
  const by = moves[event.key];
  const line = (event.target as HTMLElement).closest<HTMLElement>('[data-item]');
  if (by === undefined || !line) return;
  const lines = [...event.currentTarget.querySelectorAll<HTMLElement>('[data-item]')];
  const next = lines[lines.indexOf(line) + by];
  if (!next) return;
  event.preventDefault();
  next.focus();
};

export const ArrowLines = ({ children }: { readonly children: ReactNode }) => (
  <ol className="worklist" onKeyDown={move}>
    {children}
  </ol>
);
