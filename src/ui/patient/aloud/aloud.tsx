'use client';
/** Reading aloud is fetched only where it was chosen; a phone that cannot have it goes on without. */
import { fetchedPart } from '../phone/fetched.tsx';
import { useChosen } from '../preferences/use-chosen.ts';
import type { ReadAloudProps } from './read-aloud.tsx';

const Fetched = fetchedPart(() => import('./read-aloud.tsx').then((file) => file.ReadAloud));

export const Aloud = (props: ReadAloudProps) => (useChosen('aloud') ? <Fetched {...props} /> : null);
