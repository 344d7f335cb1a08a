/**
 * A step that needs no further signature: repetitions alone, at the same load and sets, inside the band a
 * clinician signed. At most one level in some days, so that one too soon is not made and nobody is asked to sign
 * it. For some weeks after a cut that no flare explains it waits for a signature again. Load, sets, levels, longer
 * holds, cuff schemes and pressure always wait. Since version 2.
 */
import type { Dose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { dayMilliseconds, dayNumber } from '#core/time/day.ts';
import type { Moment } from '../facts/judged-session.ts';
import { type EngineSettingValues, isOnSinceVersion2 } from '../settings.ts';
import type { Candidate } from './proposal.ts';
import { heldSeconds, markOf, prescribedLoadKg } from './volume.ts';

export interface InBandContext {
  readonly present: Dose;
  /** The dose a clinician last wrote for the line. */
  readonly signed: Dose;
  /** Every version of the line, oldest first. */
  readonly history: readonly PrescriptionVersion[];
  readonly at: Moment;
  /** Last day number on which the screening is current; null = not screened, left out = not followed here. */
  readonly screeningUntil?: number | null | undefined;
  /** Whether a cut was made while a flare was reported. */
  readonly wasInFlare: (cut: PrescriptionVersion) => boolean;
  readonly settings: EngineSettingValues;
}

/** Repetitions alone, up to the top of the signed band. A level or a load above the first was signed when it came. */
const isInBand = (dose: Dose, { present, signed }: InBandContext): boolean =>
  dose.method !== 'occlusion' &&
  present.method !== 'occlusion' &&
  signed.method !== 'occlusion' &&
  dose.exerciseId === present.exerciseId &&
  dose.side === present.side &&
  dose.sets === present.sets &&
  prescribedLoadKg(dose) === prescribedLoadKg(present) &&
  heldSeconds(dose) === heldSeconds(present) &&
  markOf(dose) === markOf(present) &&
  dose.repetitions.high <= signed.repetitions.high;

/** A morning's answer comes earlier in the day than what was signed a week before, and clocks are put forward. */
const roomMilliseconds = dayMilliseconds / 2;

/** The last dose that a clinician wrote, or that asked for more, began lately. */
const isTooSoon = ({ history, at: { instant }, settings }: InBandContext): boolean => {
  const lastLevel = history.findLast((one) => one.origin !== 'ease-back');
  return (
    lastLevel !== undefined &&
    instant - lastLevel.signedAt < settings['in-band-interval-days'] * dayMilliseconds - roomMilliseconds
  );
};

const isLocked = ({ history, at: { instant }, settings, wasInFlare }: InBandContext): boolean =>
  history.some(
    (one) =>
      one.origin === 'ease-back' &&
      instant - one.signedAt < settings['in-band-lock-days'] * dayMilliseconds &&
      !wasInFlare(one),
  );

/** Where the screening has run out, a step waits although the band was signed. */
const isScreened = ({ screeningUntil, at }: InBandContext): boolean =>
  screeningUntil === undefined || (screeningUntil !== null && screeningUntil >= dayNumber(at.day));

/** How such a step takes effect; null for every step that waits for a signature, or a pre-approval. */
export const stepInBand = (candidate: Candidate, context: InBandContext): 'acts' | 'too-soon' | null => {
  const needsNoSignature =
    isOnSinceVersion2('in-band-steps', context.settings) &&
    candidate.kind === 'step' &&
    isInBand(candidate.dose, context) &&
    isScreened(context) &&
    !isLocked(context);
  if (!needsNoSignature) return null;
  return isTooSoon(context) ? 'too-soon' : 'acts';
};
