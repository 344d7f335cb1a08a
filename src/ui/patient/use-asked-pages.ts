'use client';
/**
 * The pages with the questions, fetched as soon as the day is shown, so that the day itself opens sooner.
 * Nothing is begun before they are there; the worker keeps them for days without signal.
 */
import { useEffect, useState } from 'react';

export type AskedPages = typeof import('./asked-pages.ts');

/** `asked` is null while they are on their way, and where they could not be had. */
export const useAskedPages = (): { readonly asked: AskedPages | null; readonly isAskedMissing: boolean } => {
  const [pages, setPages] = useState<AskedPages | 'missing' | null>(null);
  useEffect(() => {
    const fetchPages = () =>
      import('./asked-pages.ts').then(setPages).catch(() => setPages((now) => now ?? 'missing'));
    void fetchPages();
    window.addEventListener('online', fetchPages);
    return () => window.removeEventListener('online', fetchPages);
  }, []);
  return { asked: pages === 'missing' ? null : pages, isAskedMissing: pages === 'missing' };
};
