/**
 * What a colleague who takes over has to know, on one page: what binds, what is closed and why, what was
 * decided last, what was overruled until when, what nobody has signed, and who looks after each pause.
 * It repeats the record and judges nothing.
 */

import type { DecisionWord, Reason } from '#core/decision/answers.ts';
import type { Joint, Limb, Side } from '#core/exercises/joints.ts';
import type { Method } from '#core/prescribing/methods.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import type { Day } from '#core/time/day.ts';

export interface IneligibleMethod {
  readonly method: Method;
  readonly text: string;
  readonly clearedBy: 'clinician' | 'physician' | null;
  readonly limbs: readonly { readonly limb: Limb; readonly side: Side }[];
}

/** Each reason that closes a method, once, with the limbs it closes. */
export const ineligibleMethods = (outcomes: readonly MethodOutcome[]): readonly IneligibleMethod[] => {
  const lines = new Map<string, IneligibleMethod>();
  for (const { method, limb, side, reasons } of outcomes) {
    for (const { eligibility, text, clearedBy } of reasons) {
      if (eligibility !== 'closed' && eligibility !== 'closed-until-cleared') continue;
      const key = `${method} ${text}`;
      const limbs = [...(lines.get(key)?.limbs ?? []), { limb, side }];
      lines.set(key, { method, text, clearedBy, limbs });
    }
  }
  return [...lines.values()];
};

interface Decided {
  readonly id: string;
  readonly joint: Joint;
  readonly decision: DecisionWord;
  readonly evaluatedAt: number;
  readonly reasons: readonly Reason[];
}

interface Answered {
  readonly decisionId: string;
  readonly kind: 'accept' | 'override';
  readonly decision: DecisionWord | null;
  readonly reason: string;
  readonly until: Day | null;
  readonly answeredName: string;
  readonly answeredAt: number;
}

export interface OverrideLine {
  readonly joint: Joint;
  readonly engine: DecisionWord;
  readonly instead: DecisionWord;
  readonly reason: string;
  readonly by: string;
  readonly until: Day;
}

/** Overrides that still hold; of several answers to one decision the newest counts. */
export const overridesInForce = (
  decisions: readonly Decided[],
  responses: readonly Answered[],
  today: Day,
): readonly OverrideLine[] => {
  const newest = new Map<string, Answered>();
  for (const row of responses) {
    const known = newest.get(row.decisionId);
    if (!known || row.answeredAt >= known.answeredAt) newest.set(row.decisionId, row);
  }
  return decisions.flatMap(({ id, joint, decision }) => {
    const row = newest.get(id);
    if (row?.kind !== 'override' || row.decision === null || row.until === null || row.until < today)
      return [];
    return [
      {
        joint,
        engine: decision,
        instead: row.decision,
        reason: row.reason,
        by: row.answeredName,
        until: row.until,
      },
    ];
  });
};

/** The last decisions over all joints, newest first. */
export const lastDecisions = <D extends Pick<Decided, 'evaluatedAt'>>(
  decisions: readonly D[],
  count = 3,
): readonly D[] => decisions.toSorted((a, b) => b.evaluatedAt - a.evaluatedAt).slice(0, count);

export interface PauseLine {
  readonly decisionId: string;
  readonly joint: Joint;
  readonly since: number;
  /** null = nobody has taken it on. */
  readonly owner: { readonly name: string; readonly until: Day; readonly isOver: boolean } | null;
}

/** Pauses that stand, each with who looks after it; owners come newest first. */
export const pauseLines = (
  newest: readonly Decided[],
  responses: readonly Answered[],
  owners: readonly { readonly decisionId: string; readonly ownerName: string; readonly until: Day }[],
  today: Day,
): readonly PauseLine[] => {
  const overruled = new Set(overridesInForce(newest, responses, today).map((row) => row.joint));
  return newest
    .filter(({ decision, joint }) => decision === 'pause' && !overruled.has(joint))
    .map(({ id, joint, evaluatedAt }) => {
      const owner = owners.find((row) => row.decisionId === id);
      return {
        decisionId: id,
        joint,
        since: evaluatedAt,
        owner: owner ? { name: owner.ownerName, until: owner.until, isOver: owner.until < today } : null,
      };
    });
};
