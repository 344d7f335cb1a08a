/**
 * Occlusion at home as recorded facts, per limb. What is counted is what a clinician logged: whole
 * sessions watched with the cuff on that limb, and the newest check of what the patient can do. A check
 * that is missing is not met. Everything else about a cuff at home stays closed.
 */

import type { Limb, Side } from '../exercises/joints.ts';
import { type HomeConditions, unmetHomeConditions } from '../prescribing/occlusion/home-conditions.ts';
import type { Day } from '../time/day.ts';

export interface SupervisedSession {
  readonly limb: Limb;
  readonly side: Side;
  readonly day: Day;
  /** Watched from putting the cuff on until it was off and the limb looked and felt normal. */
  readonly supervisedThroughout: boolean;
  readonly recordedAt: number;
  readonly by: string;
}

export interface HomeCheck {
  readonly limb: Limb;
  readonly side: Side;
  readonly day: Day;
  readonly releasesWithLeftHand: boolean;
  readonly releasesWithRightHand: boolean;
  readonly feelingIntact: boolean;
  readonly knowsToRelease: boolean;
  /** A clinician has opened an elastic wrap at home for this limb; closed unless said. */
  readonly wrapOpened: boolean;
  readonly recordedAt: number;
  readonly by: string;
}

export interface HomeFacts {
  readonly observed: readonly SupervisedSession[];
  /** Oldest first. */
  readonly checks: readonly HomeCheck[];
}

interface OfLimb {
  readonly limb: Limb;
  readonly side: Side;
}

const of =
  (site: OfLimb) =>
  (row: OfLimb): boolean =>
    row.limb === site.limb && row.side === site.side;

/** Two sessions of one day count as one: a second look on another day is the point. */
const daysSupervised = (facts: HomeFacts, site: OfLimb): number =>
  new Set(
    facts.observed
      .filter(of(site))
      .filter((row) => row.supervisedThroughout)
      .map((row) => row.day),
  ).size;

/** What is on record for a limb; null when nothing is. */
export const homeConditionsOf = (facts: HomeFacts, site: OfLimb): HomeConditions | null => {
  const check = facts.checks.findLast(of(site));
  const observedSessions = daysSupervised(facts, site);
  if (!check && observedSessions === 0) return null;
  return {
    observedSessions,
    releasesWithEitherHand: (check?.releasesWithLeftHand ?? false) && (check?.releasesWithRightHand ?? false),
    feelingIntact: check?.feelingIntact ?? false,
    knowsToRelease: check?.knowsToRelease ?? false,
    wrapOpenedForLimb: check?.wrapOpened ?? false,
  };
};

/** Why occlusion alone is closed on a limb; empty where every fact is on record. */
export const ineligibleAtHome = (facts: HomeFacts, site: OfLimb, wrap: boolean): readonly string[] =>
  unmetHomeConditions(homeConditionsOf(facts, site), wrap).map(({ reason }) => reason);
