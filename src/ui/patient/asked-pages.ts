'use client';
/** Every page on which something is asked in the course of the day; fetched once the day itself is shown. */
import './asked-words.ts';

export { Aloud } from './aloud/aloud.tsx';
export { MorningScreen } from './morning/morning-screen.tsx';
export { SessionScreen } from './session/session-screen.tsx';
export { TwoHoursScreen } from './two-hours/two-hours-screen.tsx';
