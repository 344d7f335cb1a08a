/** What the page that is asked for has to show of a form sent before it. */
import 'server-only';
import { headers } from 'next/headers';
import type { PostedAnswer } from '#api/inputs/posted-form.ts';
import { runtime } from '../../runtime.ts';
import { signedInPerson } from '../caller.ts';
import { keptAnswers } from './kept-answers.ts';
import { markIn } from './mark-cookie.ts';

export const postedAnswersHere = async (): Promise<readonly PostedAnswer[]> => {
  const asked = await headers();
  // Nearly every page: nothing was sent so, and nobody is looked up for it.
  if (!asked.get('cookie')?.includes('.form=')) return [];
  const at = runtime();
  const mark = markIn(at, asked);
  if (!mark) return [];
  const person = await signedInPerson();
  return keptAnswers(at.store).take(mark, person?.sessionId ?? null, Date.now());
};
