/**
 * The shape of one screening question and the few effects it can have.
 *
 * "Not known" has the effects of "yes". An answer that names no limb reaches every limb, and one that
 * names no detail has the most cautious effect of them; the reason says that it was not said.
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
  /** The effect falls away only where this detail was named. */
  readonly unlessDetail?: string;
  /** Source key where the effect rests on another source than its item. */
  readonly support?: string;
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
    /** The day it last happened may be given; at most this many days before the screening, it counts as the detail. */
    readonly lastDay?: { readonly withinDays: number; readonly detail: string };
    /** "Does not apply" is offered beside yes, no and not known, and counts as no. */
    readonly notApplicable?: boolean;
  };
  /** Completed years of age it is asked at, both included; left out: every age. */
  readonly askedAtAges?: { readonly from: number; readonly to: number };
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

/** Whether people of this age are asked; whoever's age is not known is asked. */
export const isAskedAt = ({ askedAtAges }: Pick<ScreeningItem, 'askedAtAges'>, ageYears: number): boolean =>
  !askedAtAges || !(ageYears < askedAtAges.from || ageYears > askedAtAges.to);

export const everyMethod: readonly Method[] = ['variation', 'low-load', 'occlusion'];
export const withoutCuff: readonly Method[] = ['variation', 'low-load'];
export const cuffOnly: readonly Method[] = ['occlusion'];

type Extra = Partial<
  Pick<ScreeningEffect, 'detail' | 'unlessDetail' | 'limb' | 'scope' | 'methods' | 'clearedBy' | 'support'>
>;

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
