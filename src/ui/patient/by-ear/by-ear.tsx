'use client';
/** A session by ear is fetched only where it was chosen; the pages say and show the same without it. */
import { lazy, Suspense } from 'react';
import { useChosen } from '../preferences/use-chosen.ts';
import type { EarProps } from './ear.tsx';

const Fetched = lazy(() =>
  import('./ear.tsx').then((file) => ({ default: file.Ear })).catch(() => ({ default: () => null })),
);

export const ByEar = (props: EarProps) =>
  useChosen('byEar') ? (
    <Suspense fallback={null}>
      <Fetched {...props} />
    </Suspense>
  ) : null;
