/**
 * German for the sentences that come from the core, by their English. Each file keeps to one concern.
 * Read by nobody yet; a clinic reviews them before use.
 */
import { jointSentences } from './sentences/joints.ts';
import type { Sentences } from './translator.ts';

/** File by file, so that a test can name what stands twice or has nothing left to translate. */
export const sentenceFiles = {
  joints: jointSentences,
} as const satisfies Readonly<Record<string, Sentences>>;

export const germanSentences: Sentences = Object.assign({}, ...Object.values(sentenceFiles));
