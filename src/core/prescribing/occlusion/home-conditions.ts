/**
 * What must be recorded before anybody does occlusion work alone. A choice of this project.
 *
 * Closed until every condition is met; an elastic wrap at home stays closed unless the clinician
 * has opened it for that limb. Missing is not met.
 */
import type { Refusal } from '#core/outcome.ts';

export interface HomeConditions {
  /** Sessions a clinician watched from start to release. */
  readonly observedSessions: number;
  /** Takes the cuff off unaided with the left hand and with the right hand. */
  readonly releasesWithEitherHand: boolean;
  readonly feelingIntact: boolean;
  /** Knows: if the phone stops, take it off. */
  readonly knowsToRelease: boolean;
  /** The clinician has opened an elastic wrap at home for this limb. */
  readonly wrapOpenedForLimb: boolean;
}

const observedSessionsNeeded = 2;

const unmet = (field: string, reason: string): Refusal => ({
  field: `input.home.${field}`,
  code: 'missing',
  reason,
});

export const unmetHomeConditions = (home: HomeConditions | null, wrap: boolean): readonly Refusal[] => {
  if (!home) {
    return [
      {
        field: 'input.home',
        code: 'missing',
        reason: 'Record the conditions for work at home, or prescribe it supervised.',
      },
    ];
  }
  const refusals: Refusal[] = [];
  if (!(home.observedSessions >= observedSessionsNeeded)) {
    refusals.push(unmet('observedSessions', 'Watch two whole sessions before occlusion is done alone.'));
  }
  if (!home.releasesWithEitherHand) {
    refusals.push(
      unmet('releasesWithEitherHand', 'The patient must take the cuff off unaided with either hand.'),
    );
  }
  if (!home.feelingIntact) refusals.push(unmet('feelingIntact', 'Check that feeling in the limb is intact.'));
  if (!home.knowsToRelease) {
    refusals.push(unmet('knowsToRelease', 'The patient must know: if the phone stops, take the cuff off.'));
  }
  if (wrap && !home.wrapOpenedForLimb) {
    refusals.push(
      unmet(
        'wrapOpenedForLimb',
        'An elastic wrap at home is closed until a clinician opens it for this limb.',
      ),
    );
  }
  return refusals;
};
