/**
 * German for the sentences that come from the core, by their English. Each file keeps to one concern.
 * Read by nobody yet; a clinic reviews them before use.
 */
import { readySentences } from '../ready.ts';
import { doseSentences } from './sentences/doses.ts';
import { jointSentences } from './sentences/joints.ts';
import { refusalSentences } from './sentences/refusals.ts';
import { summarySentences } from './sentences/self-management.ts';
import type { Sentences } from './translator.ts';

/** File by file, so that a test can name what stands twice or has nothing left to translate. */
export const sentenceFiles = {
  joints: jointSentences,
  doses: doseSentences,
  refusals: refusalSentences,
  'self-management': summarySentences,
  ready: Object.fromEntries(readySentences.map(({ en, de }) => [en, de])),
} as const satisfies Readonly<Record<string, Sentences>>;

export const germanSentences: Sentences = Object.assign({}, ...Object.values(sentenceFiles));
