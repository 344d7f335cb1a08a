'use client';
/**
 * The pages with the questions, fetched as soon as the day is shown, so that the day itself opens sooner; after them
 * what is opened seldom. Nothing is begun before they are there; the worker keeps them for days without signal.
 */
import { useEffect, useState } from 'react';

export type AskedPages = typeof import('./asked-pages.ts');
type SeldomPages = typeof import('./seldom-pages.ts');

export interface FetchedPages {
  /** null while they are on their way, and where they could not be had. */
  readonly asked: AskedPages | null;
  readonly seldom: SeldomPages | null;
  readonly isAskedMissing: boolean;
}

export const useAskedPages = (): FetchedPages => {
  const [asked, setAsked] = useState<AskedPages | 'missing' | null>(null);
  const [seldom, setSeldom] = useState<SeldomPages | null>(null);
  useEffect(() => {
    const fetchPages = async () => {
      try {
        setAsked(await import('./asked-pages.ts'));
        setSeldom(await import('./seldom-pages.ts'));
      } catch {
        setAsked((now) => now ?? 'missing');
      }
    };
    const fetchNow = () => void fetchPages();
    fetchNow();
    window.addEventListener('online', fetchNow);
    return () => window.removeEventListener('online', fetchNow);
  }, []);
  return { asked: asked === 'missing' ? null : asked, seldom, isAskedMissing: asked === 'missing' };
};
