/** What the catalogue knows of one exercise. All wording is our own. */

import type { Method } from '../prescribing/methods.ts';
import type { ExerciseId } from './ids.ts';
import type { JointName, Limb, Side } from './joints.ts';
import type { MachineKind } from './machine-kinds.ts';
import type { JointRange } from './movements.ts';
import type { Setting } from './setting.ts';

export const muscles = [
  'chest',
  'shoulders',
  'upper-back',
  'lats',
  'biceps',
  'triceps',
  'forearms',
  'trunk-front',
  'trunk-back',
  'glutes',
  'hip-abductors',
  'hip-flexors',
  'hip-adductors',
  'quadriceps',
  'hamstrings',
  'calves',
  'shins',
  'neck',
  'hand',
] as const;
export type Muscle = (typeof muscles)[number];

export interface JointDemand {
  readonly joint: JointName;
  /** Direction of the work, such as "extension". */
  readonly direction: string;
  /** Main: the joint the exercise is about; carried: loaded on the way. Both are gated. */
  readonly share: 'main' | 'carried';
  /** Whose joint: left out means the worked limb; a standing leg that only holds the body is "other". */
  readonly of?: 'worked' | 'other' | 'both';
}

export interface Exercise {
  readonly id: ExerciseId;
  readonly family: string;
  /** Name for the clinic. What the patient reads are sentences by the id. */
  readonly title: string;
  readonly methods: readonly Method[];
  readonly target: readonly Muscle[];
  /** Counted at half a set. */
  readonly indirect: readonly Muscle[];
  readonly loads: readonly JointDemand[];
  readonly limb: Limb | 'trunk';
  /** "both" = limbs work together; "one" = prescribed for a side. */
  readonly limbsAtOnce: 'both' | 'one';
  /** Pressed and held without movement: what is counted are holds of so many seconds. */
  readonly isHeld?: true;
  /** Done on a machine of the clinic and not at home; left out = no machine. */
  readonly machine?: MachineKind;
  readonly equipment: readonly string[];
  readonly position: string;
  /**
   * Limbs that carry part of the body's weight on a support, hang from one, or press end-on against one;
   * empty = none. Where an exercise may also be done sitting, the harder way counts.
   */
  readonly weightBearing: readonly ('arms' | 'legs')[];
  /** Every main joint, and carried ones whose angle the exercise sets. A clinician's reading, never shortened. */
  readonly range: readonly JointRange[];
  /** Caution ids that always go with it. */
  readonly cautions: readonly string[];
  /** What the statics model needs to know of the exercise; left out where no model stands behind it. */
  readonly setting?: Setting;
}

/** What the ladder model needs of a person. Absent = not measured. */
export interface Anthropometry {
  readonly sex: 'female' | 'male';
  readonly massKg: number;
  readonly statureCm: number;
}

export interface Level {
  readonly exerciseId: string;
  readonly shareOfBodyMass: number | null;
  readonly effectiveLoadKg: number | null;
  /** What the effective load is counted over, in words: "per working leg". */
  readonly effectiveLoadAbout: string | null;
  /** External moment at each loaded joint, N·m, per limb. */
  readonly moments: readonly { readonly joint: JointName; readonly newtonMetres: number }[];
  /** Published share, where one was measured. */
  readonly measuredShare: number | null;
  /** Model minus measured share; null where no measurement was found. */
  readonly modelError: number | null;
  readonly remark: string;
  /** The figure the ladder is ordered by; null where none can be computed for this person. */
  readonly measure: LevelMeasure | null;
}

const levelMeasureKinds = ['effective-load', 'joint-moment', 'relative-moment'] as const;

export interface LevelMeasure {
  readonly kind: (typeof levelMeasureKinds)[number];
  readonly value: number;
  /** UCUM code, '1' for a pure number. */
  readonly unit: string;
  /** What the figure is, in words: "hip moment per leg". */
  readonly about: string;
}

/** Side an exercise is prescribed for. */
export type WorkedSide = Side | 'both';
