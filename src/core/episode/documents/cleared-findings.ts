/** Screening findings that somebody cleared, each with who did, when and why, as long as the clearance reaches it. */
import type { Limb, Side } from '#core/exercises/joints.ts';
import type { Method } from '#core/prescribing/methods.ts';
import { jointBlocks } from '#core/screening/joint-blocks.ts';
import type { Clearance, MethodOutcome, MethodReason, Screening } from '#core/screening/screening.ts';
import type { Day } from '#core/time/day.ts';

export interface ClearedFinding {
  readonly method: Method;
  /** On which limbs; empty = it is about a joint, not a limb. */
  readonly limbs: readonly { readonly limb: Limb; readonly side: Side }[];
  readonly finding: Pick<MethodReason, 'code' | 'from' | 'text'>;
  readonly reason: string;
  readonly by: string;
  readonly on: Day;
}

/** What `afterClearances` writes behind a reason it has opened. */
const tailOf = ({ by, day, reason }: Clearance): string => ` Cleared by ${by} on ${day}: ${reason}`;

const clearedOnLimbs = (clearance: Clearance, outcomes: readonly MethodOutcome[]) => {
  const found = new Map<string, ClearedFinding>();
  const { method, reason, by, day: on } = clearance;
  for (const outcome of outcomes.filter((one) => one.method === method)) {
    for (const { code, from, text } of outcome.reasons) {
      const tail = tailOf(clearance);
      if (!clearance.findings.includes(code) || !text.endsWith(tail)) continue;
      const limbs = [...(found.get(code)?.limbs ?? []), { limb: outcome.limb, side: outcome.side }];
      const finding = { code, from, text: text.slice(0, -tail.length) };
      found.set(code, { method, limbs, finding, reason, by, on });
    }
  }
  return [...found.values()];
};

export const clearedFindings = (
  outcomes: readonly MethodOutcome[],
  clearances: readonly Clearance[],
  screening: Screening | null,
): readonly ClearedFinding[] =>
  clearances.flatMap((clearance) => {
    const { method, reason, by, day: on } = clearance;
    const ofJoints = jointBlocks(screening)
      .filter(({ reason: { code } }) => clearance.findings.includes(code) && on >= (screening?.day ?? on))
      .map(({ reason: { code, from, text } }) => ({
        method,
        limbs: [],
        finding: { code, from, text },
        reason,
        by,
        on,
      }));
    return [...clearedOnLimbs(clearance, outcomes), ...ofJoints];
  });
