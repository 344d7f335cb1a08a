'use client';
/** Reading aloud is fetched only where it was chosen; a phone that cannot have it goes on without. */
import { lazy, Suspense } from 'react';
import { useChosen } from '../preferences/use-chosen.ts';
import type { ReadAloudProps } from './read-aloud.tsx';

const Fetched = lazy(() =>
  import('./read-aloud.tsx')
    .then((file) => ({ default: file.ReadAloud }))
    .catch(() => ({ default: () => null })),
);

export const Aloud = (props: ReadAloudProps) =>
  useChosen('aloud') ? (
    <Suspense fallback={null}>
      <Fetched {...props} />
    </Suspense>
  ) : null;
