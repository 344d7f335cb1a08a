/** What a clinician asks for when planning an occlusion exercise, before anything was checked. */
import type { Limb, Side } from '#core/exercises/joints.ts';
import type { OcclusionDose, Position } from '../dose.ts';
import type { HomeConditions } from './home-conditions.ts';

export type CuffRequest =
  | {
      readonly kind: 'pneumatic';
      readonly widthCm: number;
      readonly position: Position;
      readonly percent: number;
    }
  | { readonly kind: 'elastic-wrap'; readonly tightness: number };

export interface OcclusionRequest {
  readonly exerciseId: string;
  readonly limb: Limb | 'trunk';
  readonly side: Side | 'both';
  readonly schemeId: string;
  readonly secondsPerRepetition: number;
  readonly restSeconds: number;
  /** Left out: as the scheme says. */
  readonly inflation?: OcclusionDose['inflation'];
  readonly sessionsPerWeek: number;
  /** What the patient will pick up, already rounded to what they own. */
  readonly loadKg: number;
  readonly oneRepMaxKg: number | null;
  readonly cuff: CuffRequest;
  readonly supervised: boolean;
  /** Left out: the pulse beyond the cuff is not asked about. */
  readonly pulseShown?: boolean;
  readonly home: HomeConditions | null;
}

/** One step of the arithmetic, for "show the working". */
export interface WorkingLine {
  readonly text: string;
  /** Source key, "clinic" or "common-practice". */
  readonly support: string;
}
