'use client';
/** Who types, and language and weights: closed and seldom opened, so their scripts come after the page. */
import type { ReactNode } from 'react';
import './seldom-words.ts';
import { EnteredBy, type EnteredByProps } from '../entered-by.tsx';
import { Preferences } from '../preferences/preferences.tsx';

export const SeldomNeeded = (props: EnteredByProps): ReactNode => (
  <>
    <EnteredBy {...props} />
    <Preferences />
  </>
);
