/**
 * German for the sentences that come from the core, by their English: exercises, cautions, reasons and the
 * rest. Each file keeps to one concern. Read by nobody yet; a clinic reviews them before use.
 */
import type { Sentences } from '../telling.ts';
import { agreementSentences } from './sentences/agreements.ts';
import { cautionSentences } from './sentences/cautions.ts';
import { changeSentences } from './sentences/changes.ts';
import { doseSentences } from './sentences/doses.ts';
import { jointSentences } from './sentences/joints.ts';
import { questionSentences } from './sentences/questions.ts';
import { reasonSentences } from './sentences/reasons.ts';
import { refusalSentences } from './sentences/refusals.ts';
import { sheetSentences } from './sentences/self-management.ts';

export const sentenceFiles: readonly Sentences[] = [
  cautionSentences,
  agreementSentences,
  changeSentences,
  doseSentences,
  jointSentences,
  questionSentences,
  reasonSentences,
  refusalSentences,
  sheetSentences,
];

export const germanSentences: Sentences = Object.assign({}, ...sentenceFiles);
