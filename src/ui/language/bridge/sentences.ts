/**
 * German for the sentences that come from the core, by their English: exercises, cautions and the
 * rest. Each file keeps to one concern. Read by nobody yet; a clinic reviews them before use.
 */
import { readySentences } from '../ready.ts';
import { alwaysSentences } from './sentences/cautions-always.ts';
import { exerciseCautionSentences } from './sentences/cautions-exercise.ts';
import { healthCautionSentences } from './sentences/cautions-health.ts';
import { jointCautionSentences } from './sentences/cautions-joint.ts';
import { methodCautionSentences } from './sentences/cautions-method.ts';
import { doseSentences } from './sentences/doses.ts';
import { armExercises } from './sentences/exercises-arm.ts';
import { chestAndBackExercises } from './sentences/exercises-chest-and-back.ts';
import { legExercises } from './sentences/exercises-leg.ts';
import { sharedSteps } from './sentences/exercises-shared.ts';
import { trunkExercises } from './sentences/exercises-trunk.ts';
import { jointSentences } from './sentences/joints.ts';
import { refusalSentences } from './sentences/refusals.ts';
import { summarySentences } from './sentences/self-management.ts';
import type { Sentences } from './translator.ts';

/** File by file, so that a test can name what stands twice or has nothing left to translate. */
export const sentenceFiles = {
  joints: jointSentences,
  'exercises-shared': sharedSteps,
  'exercises-leg': legExercises,
  'exercises-chest-and-back': chestAndBackExercises,
  'exercises-arm': armExercises,
  'exercises-trunk': trunkExercises,
  'cautions-always': alwaysSentences,
  'cautions-exercise': exerciseCautionSentences,
  'cautions-joint': jointCautionSentences,
  'cautions-method': methodCautionSentences,
  'cautions-health': healthCautionSentences,
  doses: doseSentences,
  refusals: refusalSentences,
  'self-management': summarySentences,
  ready: Object.fromEntries(readySentences.map(({ en, de }) => [en, de])),
} as const satisfies Readonly<Record<string, Sentences>>;

export const germanSentences: Sentences = Object.assign({}, ...Object.values(sentenceFiles));
