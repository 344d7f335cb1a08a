/**
 * The shape of one screening question and the few effects it can have.
 *
 * "Not known" has the effects of "yes". An answer that names no limb speaks of every limb, and one
 * that names no detail has the effects of every detail, because what was not said may be so.
 */

import type { JointName, Limb } from '../exercises/joints.ts';
import type { Eligibility, Method } from '../prescribing/methods.ts';
import type { Mark } from '../sources/citation.ts';

export interface ScreeningEffect {
  /** Stable code, stored in clearances. */
  readonly code: string;
  readonly methods: readonly Method[];
  /** "answered-limbs": only the limbs the answer names, or every limb when it names none. */
  readonly scope: 'everywhere' | 'answered-limbs';
  readonly eligibility: Exclude<Eligibility, 'open'>;
  readonly clearedBy: 'clinician' | 'physician' | null;
  readonly text: string;
  /** The effect belongs to this detail only. */
  readonly detail?: string;
  /** The effect reaches this kind of limb only. */
  readonly limb?: Limb;
}

export interface ScreeningItem {
  readonly id: string;
  readonly clinicianLabel: string;
  readonly asks: {
    readonly limbs?: boolean;
    readonly joints?: boolean;
    /** Ids of what can be ticked. */
    readonly details?: readonly string[];
  };
  /** Methods that stay closed until this item has been answered. */
  readonly minimumFor: readonly Method[];
  readonly effects: readonly ScreeningEffect[];
  /** Joints that may not be loaded: the answered ones, or a fixed list. */
  readonly blocksJoints?: 'answered' | readonly JointName[];
  /** Closes the nutrition target until a clinician has looked. */
  readonly locksNutrition?: boolean;
  /** Asked again before each occlusion session. */
  readonly askBeforeOcclusion?: boolean;
  /** Source key, "common-practice" or "clinic". */
  readonly support: string;
  readonly mark: Mark;
  /** Further sources that bear on it, agreeing or not. */
  readonly alsoSee?: readonly string[];
}

export const everyMethod: readonly Method[] = ['variation', 'low-load', 'occlusion'];
export const withoutCuff: readonly Method[] = ['variation', 'low-load'];
export const cuffOnly: readonly Method[] = ['occlusion'];

type Extra = Partial<Pick<ScreeningEffect, 'detail' | 'limb' | 'scope' | 'methods' | 'clearedBy'>>;

/** Nothing is done until a physician has cleared it. */
export const stopAll = (code: string, text: string, extra: Extra = {}): ScreeningEffect => ({
  code,
  methods: everyMethod,
  scope: 'everywhere',
  eligibility: 'closed-until-cleared',
  clearedBy: 'physician',
  text,
  ...extra,
});

/** No occlusion work at all while the answer stands. */
export const stopOcclusion = (code: string, text: string, extra: Extra = {}): ScreeningEffect => ({
  code,
  methods: cuffOnly,
  scope: 'everywhere',
  eligibility: 'closed',
  clearedBy: null,
  text,
  ...extra,
});

/** No occlusion work on the named limbs while the answer stands. */
export const stopLimb = (code: string, text: string, extra: Extra = {}): ScreeningEffect =>
  stopOcclusion(code, text, { scope: 'answered-limbs', ...extra });

/** Occlusion work waits for a clinician's decision. */
export const review = (code: string, text: string, extra: Extra = {}): ScreeningEffect => ({
  code,
  methods: cuffOnly,
  scope: 'everywhere',
  eligibility: 'closed-until-cleared',
  clearedBy: 'clinician',
  text,
  ...extra,
});

/** Work may go on with the caution that belongs to the item. */
export const precaution = (code: string, text: string, extra: Extra = {}): ScreeningEffect => ({
  code,
  methods: withoutCuff,
  scope: 'everywhere',
  eligibility: 'open-with-precautions',
  clearedBy: null,
  text,
  ...extra,
});
