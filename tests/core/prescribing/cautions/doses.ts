/** One invented dose per method and cuff, and the cautions of any of them. */
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import { type CautionsInput, cautionsFor } from '#core/prescribing/cautions/cautions-for.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { screeningItems } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { screeningWith } from '../../screening/answers.ts';

const base = {
  exerciseId: 'x',
  side: 'left',
  sets: 3,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 2,
} as const;
const band = { low: 15, high: 30 };
export const lowLoad: Dose = {
  ...base,
  method: 'low-load',
  repetitions: band,
  reserve: 2,
  loadKg: 5,
  oneRepMaxKg: null,
};
const variation: Dose = {
  ...base,
  method: 'variation',
  repetitions: band,
  reserve: 2,
  effectiveLoadKg: null,
  addedKg: 0,
};
export const wrap: Dose = {
  ...base,
  method: 'occlusion',
  limb: 'leg',
  scheme: [15, 15, 15],
  loadKg: 5,
  oneRepMaxKg: null,
  cuff: { kind: 'elastic-wrap', tightness: 7 },
  inflation: 'continuous',
  capSeconds: 600,
  supervised: false,
};
export const cuff: Dose = {
  ...wrap,
  cuff: {
    kind: 'pneumatic',
    widthCm: 18,
    position: 'seated',
    pressureMmhg: 120,
    percentOfLimbOcclusionPressure: 60,
    limbOcclusionPressureMmhg: 200,
    measuredOn: '2026-02-23',
  },
  supervised: true,
};
export const doses = [lowLoad, variation, wrap, cuff];

export const cautions = (changed: Partial<CautionsInput> = {}) =>
  cautionsFor({
    dose: lowLoad,
    screening: screeningWith(),
    measurements: [],
    joints: [],
    exerciseCautions: [],
    settings: {},
    ...changed,
  });
export const ids = (list: readonly Caution[]) => list.map(({ id }) => id);

export const allYes: readonly ScreeningItemAnswer[] = screeningItems.map(({ id }) => ({
  item: id,
  answer: 'yes',
}));
