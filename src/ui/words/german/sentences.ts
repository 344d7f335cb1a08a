/**
 * German for the sentences that come from the core, by their English: exercises, cautions, reasons and the
 * rest. Each file keeps to one concern. Read by nobody yet; a clinic reviews them before use.
 */
import type { Sentences } from '../telling.ts';
import { cautionSentences } from './sentences/cautions.ts';

export const sentenceFiles: readonly Sentences[] = [cautionSentences];

export const germanSentences: Sentences = Object.assign({}, ...sentenceFiles);
