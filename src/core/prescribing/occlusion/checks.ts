/**
 * What to look at before, during and after occlusion work, and when the cuff comes off.
 *
 * First-aid practice and rules of this project, not a published protocol. Refill of the nail bed is
 * only partly reliable in exercise (cold, redistribution, observer), so pulse, colour and feeling
 * stand beside it.
 */
import type { OcclusionCheckId } from '../cautions/ids.ts';

type CheckMoment = 'before' | 'during' | 'after';

export interface OcclusionCheck {
  /** What the patient reads are sentences by it. */
  readonly id: OcclusionCheckId;
  readonly moment: CheckMoment;
  readonly text: string;
  readonly support: string;
}

const check = (id: OcclusionCheckId, moment: CheckMoment, text: string): OcclusionCheck => ({
  id,
  moment,
  text,
  support: 'common-practice',
});

/** Pain under the cuff, 0-10, from which the exercise ends. */
const painUnderCuffEndsExercise = 7;

const refillSeconds = { restingUpTo: 2, releaseAbove: 3 } as const;

export const occlusionChecks: readonly OcclusionCheck[] = [
  check('re-ask', 'before', 'Ask the re-ask items of the screening again; anything new closes the session.'),
  check(
    'skin-before',
    'before',
    'Skin under the cuff whole, limb warm, feeling intact, no swelling of the calf.',
  ),
  check('pulse-before', 'before', 'Distal pulse felt: radial, or posterior tibial or dorsalis pedis.'),
  check('pain-before-exercise', 'before', 'Pain before the first repetition means too tight.'),
  check(
    'pulse-during',
    'during',
    'Distal pulse stays palpable at the prescribed pressure, at the start and in each rest.',
  ),
  check(
    'colour-during',
    'during',
    'Nails and palm or sole against the other side: a little redder or darker is expected; paler, grey, bluish or mottled is not.',
  ),
  check(
    'refill-during',
    'during',
    `Nail-bed refill: up to ${refillSeconds.restingUpTo} s at rest; above ${refillSeconds.releaseAbove} s after a re-check releases.`,
  ),
  check('three-scores', 'during', 'Joint pain, muscle burn and cuff discomfort are asked apart.'),
  check(
    'release-between',
    'after',
    'Release between exercises for at least a minute, three minutes after a block.',
  ),
  check('colour-after', 'after', 'Colour, warmth and feeling are back within ten minutes.'),
  check(
    'mornings-after',
    'after',
    'Dark urine and pain out of proportion are asked on the next three mornings after a first, resumed or increased session.',
  ),
];

export const releaseEffects = ['end-session', 'end-exercise', 'tell-clinician', 'urgent'] as const;
type ReleaseEffect = (typeof releaseEffects)[number];

export interface ReleaseRule {
  readonly id: string;
  readonly effect: ReleaseEffect;
  readonly text: string;
}

const release = (effect: ReleaseEffect, id: string, text: string): ReleaseRule => ({ id, effect, text });

/** Ordered from what ends the session now to what is told afterwards. */
export const releaseRules: readonly ReleaseRule[] = [
  release('end-session', 'no-pulse', 'No distal pulse.'),
  release('end-session', 'slow-refill', `Refill over ${refillSeconds.releaseAbove} s after a re-check.`),
  release(
    'end-session',
    'white-or-blue',
    'Nails, palm or sole paler, grey or bluish against the other side.',
  ),
  release(
    'end-session',
    'numbness-persists',
    'Numbness or pins and needles that do not ease within a minute.',
  ),
  release('end-session', 'sharp-pain', 'Sharp or shooting pain.'),
  release('end-session', 'sudden-swelling', 'Sudden swelling.'),
  release(
    'end-session',
    'chest-faint-head-sight',
    'Chest pain, faintness, severe headache or a change of sight: emergency care.',
  ),
  release('end-session', 'cramp-at-rest', 'Cramp of the limb at rest.'),
  release('end-session', 'phone-stopped', 'The phone or timer stopped.'),
  release(
    'end-exercise',
    'pain-under-cuff',
    `Pain under the cuff or wrap of ${painUnderCuffEndsExercise} or more of 10.`,
  ),
  release('end-exercise', 'tightness-over-target', 'Tightness above 7 of 10.'),
  release('end-exercise', 'time-reached', 'The planned time is reached.'),
  release('end-exercise', 'failure-reached', 'Failure is reached in the scheme.'),
  release('end-exercise', 'patient-asks', 'The patient asks.'),
  release('tell-clinician', 'bruising', 'Bruising or small red spots under the cuff.'),
  release(
    'tell-clinician',
    'numb-after-ten-minutes',
    'Numbness or pins and needles more than ten minutes after release: contact the same day.',
  ),
  release('urgent', 'calf', 'Calf swelling, warmth or pain: medical contact the same day.'),
  release('urgent', 'dark-urine', 'Dark urine or severe soreness at 48-72 h.'),
];
