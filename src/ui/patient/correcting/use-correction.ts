'use client';
/** The session that can be put right from this page, and what was put right on it. */
import { useState } from 'react';
import type { SentSession } from '#api/patient/today-view.ts';
import { type Known, sessionToCorrect } from './sent-session.ts';

export const useCorrection = (known: Omit<Known, 'corrected'>) => {
  const [corrected, setCorrected] = useState<SentSession | null>(null);
  return { toCorrect: sessionToCorrect({ ...known, corrected }), setCorrected };
};
