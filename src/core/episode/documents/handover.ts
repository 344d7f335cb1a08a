/**
 * What a colleague who takes over has to know, on one page: what binds, what is closed and why, what was
 * decided last, what was overruled until when, what nobody has signed, and who looks after each pause.
 * It repeats the record and judges nothing.
 */

import type { DecisionWord, Reason } from '#core/decision/answers.ts';
import type { ClinicianAnswer } from '#core/decision/decisions-in-force.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint, Limb, Side } from '#core/exercises/joints.ts';
import type { Plan } from '#core/plan/plan.ts';
import type { Method } from '#core/prescribing/methods.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import type { Day } from '#core/time/day.ts';
import type { DueItem } from '#core/worklist/item.ts';

export interface IneligibleMethod {
  readonly method: Method;
  readonly code: string;
  /** Screening item or measurement that caused it. */
  readonly from: string;
  readonly text: string;
  readonly clearedBy: 'clinician' | 'physician' | null;
  readonly limbs: readonly { readonly limb: Limb; readonly side: Side }[];
}

/** Each reason that closes a method, once, with the limbs it closes. */
export const ineligibleMethods = (outcomes: readonly MethodOutcome[]): readonly IneligibleMethod[] => {
  const lines = new Map<string, IneligibleMethod>();
  for (const { method, limb, side, reasons } of outcomes) {
    for (const { code, from, eligibility, text, clearedBy } of reasons) {
      if (eligibility !== 'closed' && eligibility !== 'closed-until-cleared') continue;
      const key = `${method} ${text}`;
      const limbs = [...(lines.get(key)?.limbs ?? []), { limb, side }];
      lines.set(key, { method, code, from, text, clearedBy, limbs });
    }
  }
  return [...lines.values()];
};

/** An urgent item on the worklist. */
export interface OpenDanger extends Pick<DueItem, 'kind' | 'joint' | 'facts'> {
  readonly sentence: string;
  /** Of a warning sign; empty where a clinician paused for a reason of his or her own. */
  readonly flags: readonly RedFlag[];
}

interface Decided {
  readonly id: string;
  readonly joint: Joint;
  readonly decision: DecisionWord;
  readonly evaluatedAt: number;
  readonly reasons: readonly Reason[];
}

export interface OverrideLine {
  readonly joint: Joint;
  readonly engine: DecisionWord;
  readonly instead: DecisionWord;
  readonly reason: string;
  readonly by: string;
  readonly until: Day;
}

interface Answered extends ClinicianAnswer {
  readonly reason: string;
  readonly answeredName: string;
}

/** Overrides in force, each with what it stands in place of. */
export const overridesOf = (
  { joints }: Pick<Plan, 'joints'>,
  decisions: readonly Decided[],
  responses: readonly Answered[],
): readonly OverrideLine[] =>
  [...joints.values()]
    .filter(({ from }) => from === 'clinician')
    .flatMap(({ joint, decision, decisionId }) => {
      const of = decisions.find(({ id }) => id === decisionId);
      const [row] = responses
        .filter((one) => one.decisionId === decisionId && one.kind === 'override')
        .toSorted((x, y) => y.answeredAt - x.answeredAt);
      if (!of || !row?.until) return [];
      const { reason, answeredName: by, until } = row;
      return [{ joint, engine: of.decision, instead: decision, reason, by, until }];
    });

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

/** Joints the engine has paused and nobody has overruled, each with who follows it up; owners come newest first. */
export const pauseLines = (
  { joints, asks }: Pick<Plan, 'joints' | 'asks'>,
  owners: readonly { readonly decisionId: string; readonly ownerName: string; readonly until: Day }[],
  today: Day,
): readonly PauseLine[] =>
  [...joints.values()]
    .filter(({ decision, from }) => decision === 'pause' && from !== 'clinician')
    .flatMap(({ joint, decisionId }) => {
      const asked = asks.find(({ id }) => id === decisionId);
      const owner = owners.find((row) => row.decisionId === decisionId);
      if (!asked) return [];
      return [
        {
          decisionId,
          joint,
          since: asked.evaluatedAt,
          owner: owner ? { name: owner.ownerName, until: owner.until, isOver: owner.until < today } : null,
        },
      ];
    });
