'use client';
/** Pages that are opened seldom; fetched after those with the day's questions, and kept for days without signal. */
export { ChangedScreen } from './changed/changed-screen.tsx';
export { CorrectScreen } from './correcting/correct-screen.tsx';
export { HomeQuestionsScreen } from './home-questions/home-questions-screen.tsx';
