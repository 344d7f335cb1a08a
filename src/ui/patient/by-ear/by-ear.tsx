'use client';
/** A session by ear is fetched only where it was chosen; the pages say and show the same without it. */
import { fetchedPart } from '../phone/fetched.tsx';
import { useChosen } from '../preferences/use-chosen.ts';
import type { EarProps } from './ear.tsx';

const Fetched = fetchedPart(() => import('./ear.tsx').then((file) => file.Ear));

export const ByEar = (props: EarProps) => (useChosen('byEar') ? <Fetched {...props} /> : null);
