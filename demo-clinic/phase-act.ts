/** What a clinician does with phases after an operation; days are counted from that of the visit. */
import type { Joint } from '#core/exercises/joints.ts';
import type { WeightBearing } from '#core/record/limit.ts';

export type PhaseAct =
  | {
      readonly does: 'begin-protocol';
      readonly protocol: string;
      readonly joint: Joint;
      readonly procedure: string;
      readonly daysAgo: number;
      readonly author: string;
      readonly letter: string;
    }
  | {
      readonly does: 'write-phase';
      readonly protocol: string;
      readonly place: number;
      readonly name: string;
      readonly inDays: number;
      readonly weightBearing: WeightBearing;
      readonly bearKg: number | null;
      readonly flexionToDegrees: number | null;
      readonly limitKg: number | null;
    }
  | {
      readonly does: 'confirm-phase';
      readonly protocol: string;
      readonly place: number;
      readonly seen: string;
    };
