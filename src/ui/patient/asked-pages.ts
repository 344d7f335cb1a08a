'use client';
/** Every page on which something is asked in the course of the day, and how its answers are taken; fetched once the day itself is shown. */
import './asked-words.ts';

export { Aloud } from './aloud/aloud.tsx';
export { beginMorning, morningReducer } from './morning/morning.ts';
export { morningSent } from './morning/morning-entry.ts';
export { MorningScreen } from './morning/morning-screen.tsx';
export { takenUp } from './morning/two-mornings.ts';
export { beginSession } from './session/begin.ts';
export { sessionEntryOf } from './session/entry.ts';
export { timedReducer } from './session/session-reducer.ts';
export { SessionScreen } from './session/session-screen.tsx';
export { TwoHoursScreen } from './two-hours/two-hours-screen.tsx';
