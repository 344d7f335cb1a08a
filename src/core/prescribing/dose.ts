/** A prescribed dose, one shape per method. Units stand in the names; repetitions are per set. */
import type { Limb, Side } from '../exercises/joints.ts';

export interface RepetitionBand {
  readonly low: number;
  readonly high: number;
}

interface DoseBase {
  /** Catalogue id of the exercise; for a variation it is the level. */
  readonly exerciseId: string;
  /** Side worked; "both" when both limbs work together. */
  readonly side: Side | 'both';
  readonly sets: number;
  readonly restSeconds: number;
  /** One whole repetition, lowering and lifting; of a hold the time to the next one. */
  readonly secondsPerRepetition: number;
  readonly sessionsPerWeek: number;
}

/** Each hold, and the longest that steps lead to. One not held to its end is not counted. */
export interface Hold {
  readonly seconds: number;
  readonly mostSeconds: number;
}

export interface LowLoadDose extends DoseBase {
  readonly method: 'low-load';
  readonly repetitions: RepetitionBand;
  /** Repetitions in reserve at the end of a set, 0–3. */
  readonly reserve: number;
  /** What the patient picks up or sets, after rounding to the loads of the place. */
  readonly loadKg: number;
  /** The estimate the load was taken from; null when dosed by effort alone. */
  readonly oneRepMaxKg: number | null;
  /** The clinic’s machine on which it is done, and nowhere else; left out = at home. */
  readonly machine?: DoseMachine;
}

/** Named as it was called when the dose was proposed. */
export interface DoseMachine {
  readonly id: string;
  readonly name: string;
}

export interface VariationDose extends DoseBase {
  readonly method: 'variation';
  readonly repetitions: RepetitionBand;
  readonly reserve: number;
  /** Effective load of the level for this person, kg; null where no figure is known. */
  readonly effectiveLoadKg: number | null;
  /** Weight added by hand or cuff, kg. */
  readonly addedKg: number;
  /** Of an exercise that is pressed and held: `repetitions` are holds. Left out = it moves. */
  readonly hold?: Hold;
  /** The number on the putty, ring or band, by the clinic’s own row from soft to firm; left out = none was named. */
  readonly mark?: number;
}

export interface OcclusionDose extends DoseBase {
  readonly method: 'occlusion';
  readonly limb: Limb;
  /** One limb at a time. */
  readonly side: Side;
  /** Repetitions of each set in order, such as 30, 15, 15, 15; its length equals `sets`. */
  readonly scheme: readonly number[];
  readonly loadKg: number;
  readonly oneRepMaxKg: number | null;
  readonly cuff: Cuff;
  readonly inflation: 'continuous' | 'intermittent';
  /** Longest time under restriction for this exercise. */
  readonly capSeconds: number;
  readonly supervised: boolean;
  /** The patient was shown how to feel the pulse beyond the cuff; absent in doses from before it was asked. */
  readonly pulseShown?: boolean;
}

/** A wrap has a tightness and never a pressure. */
export type Cuff =
  | {
      readonly kind: 'pneumatic';
      readonly widthCm: number;
      readonly position: Position;
      readonly pressureMmhg: number;
      readonly percentOfLimbOcclusionPressure: number;
      readonly limbOcclusionPressureMmhg: number;
      /** Civil day of the measurement the pressure was taken from. */
      readonly measuredOn: string;
    }
  | { readonly kind: 'elastic-wrap'; readonly tightness: number };

export const positions = ['supine', 'seated', 'standing'] as const;
export type Position = (typeof positions)[number];

export type Dose = LowLoadDose | VariationDose | OcclusionDose;

/** Repetitions from which a set counts as done, and to which it is meant to go. */
export const repetitionsOfSet = (dose: Dose, set: number): RepetitionBand =>
  dose.method === 'occlusion'
    ? { low: dose.scheme[set - 1] ?? 0, high: dose.scheme[set - 1] ?? 0 }
    : dose.repetitions;
