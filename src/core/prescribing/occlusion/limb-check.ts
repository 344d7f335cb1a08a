/**
 * The look at fingers or toes once a cuff or wrap is off: colour, feeling and, where the patient was
 * shown it, the pulse beyond the cuff, each asked apart.
 *
 * Rules of this project from first-aid practice (from memory), not a published protocol: a pulse that is
 * not felt counts as pale or bluish nails do, and what is not as usual ten minutes after release is the
 * warning sign of the engine's table. An answer that is missing is never "as usual". It does not say that
 * a limb whose signs are all as usual is well.
 */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { OcclusionDose } from '../dose.ts';

export const limbSigns = ['colour', 'feeling', 'pulse'] as const;
export type LimbSign = (typeof limbSigns)[number];

/** Two minutes after release, and once more ten minutes after it where a sign was not as usual. */
export const limbMoments = ['after', 'later'] as const;

export const signAnswers = ['usual', 'not-usual'] as const;
export type SignAnswer = (typeof signAnswers)[number];

/** Not asked: the prescription does not say that it was shown. Not shown: the patient says it was not. */
export const pulseStates = ['asked', 'not-shown', 'not-asked'] as const;

export interface LimbCheck {
  readonly itemId: string;
  readonly moment: (typeof limbMoments)[number];
  /** null = asked and not answered, or not known. */
  readonly colour: SignAnswer | null;
  readonly feeling: SignAnswer | null;
  /** null also where it was not asked or never shown; `pulseState` tells which. */
  readonly pulse: SignAnswer | null;
  readonly pulseState: (typeof pulseStates)[number];
}

export const signsAsked = ({ pulseShown }: Pick<OcclusionDose, 'pulseShown'>): readonly LimbSign[] =>
  pulseShown ? limbSigns : ['colour', 'feeling'];

const isChanged = (check: LimbCheck): boolean => limbSigns.some((sign) => check[sign] === 'not-usual');

/** The warning signs of an entry with what its looks at fingers or toes add; null = not asked. */
export const flagsWithLimb = (
  flags: readonly RedFlag[] | null,
  checks: readonly LimbCheck[],
): readonly RedFlag[] | null =>
  checks.some((check) => check.moment === 'later' && isChanged(check))
    ? [...new Set<RedFlag>([...(flags ?? []), 'persistent-limb-change-after-release'])]
    : flags;

export const inconsistentPulse = (checks: readonly LimbCheck[]): LimbCheck | undefined =>
  checks.find((check) => check.pulse !== null && check.pulseState !== 'asked');
