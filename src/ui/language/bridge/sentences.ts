/**
 * German for the sentences that come from the core, by their English: reasons, questions and the
 * rest. Each file keeps to one concern. Read by nobody yet; a clinic reviews them before use.
 */
import { readySentences } from '../ready.ts';
import { changeSentences } from './sentences/changes.ts';
import { consentSentences } from './sentences/consents.ts';
import { doseSentences } from './sentences/doses.ts';
import { exerciseTitles } from './sentences/exercise-titles.ts';
import { jointSentences } from './sentences/joints.ts';
import { questionSentences } from './sentences/questions.ts';
import { reasonSentences } from './sentences/reasons.ts';
import { refusalSentences } from './sentences/refusals.ts';
import { summarySentences } from './sentences/self-management.ts';
import type { Sentences } from './translator.ts';

/** File by file, so that a test can name what stands twice or has nothing left to translate. */
export const sentenceFiles = {
  joints: jointSentences,
  'exercise-titles': exerciseTitles,
  consents: consentSentences,
  changes: changeSentences,
  doses: doseSentences,
  questions: questionSentences,
  reasons: reasonSentences,
  refusals: refusalSentences,
  'self-management': summarySentences,
  ready: Object.fromEntries(readySentences.map(({ en, de }) => [en, de])),
} as const satisfies Readonly<Record<string, Sentences>>;

export const germanSentences: Sentences = Object.assign({}, ...Object.values(sentenceFiles));
