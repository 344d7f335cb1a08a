/** Doses of all three methods, over every exercise of the catalogue. */
import fc from 'fast-check';
import { exercises } from '#core/exercises/catalogue.ts';
import type { Dose, LowLoadDose, OcclusionDose, VariationDose } from '#core/prescribing/dose.ts';

const exerciseId = fc.constantFrom(...exercises.map(({ id }) => id));
const kilograms = fc.constantFrom(0, 0.5, 1.25, 2, 2.5, 4, 10, 12.5);
const side = fc.constantFrom('left' as const, 'right' as const);

const base = {
  exerciseId,
  sets: fc.integer({ min: 1, max: 5 }),
  restSeconds: fc.constantFrom(30, 60, 90),
  secondsPerRepetition: fc.constant(4),
  sessionsPerWeek: fc.integer({ min: 1, max: 4 }),
};

const repetitions = fc
  .tuple(fc.integer({ min: 5, max: 30 }), fc.integer({ min: 0, max: 6 }))
  .map(([low, more]) => ({ low, high: low + more }));

/** What the methods with a band of repetitions share. */
const counted = {
  ...base,
  side: fc.constantFrom('left' as const, 'right' as const, 'both' as const),
  repetitions,
  reserve: fc.integer({ min: 0, max: 3 }),
};

const lowLoad: fc.Arbitrary<LowLoadDose> = fc.record({
  ...counted,
  method: fc.constant('low-load' as const),
  loadKg: kilograms,
  oneRepMaxKg: fc.constant(null),
});

const variation: fc.Arbitrary<VariationDose> = fc.record({
  ...counted,
  method: fc.constant('variation' as const),
  effectiveLoadKg: fc.constant(null),
  addedKg: kilograms,
});

const pneumatic = {
  kind: 'pneumatic',
  widthCm: 12,
  position: 'seated',
  pressureMmhg: 90,
  percentOfLimbOcclusionPressure: 60,
  limbOcclusionPressureMmhg: 150,
  measuredOn: '2026-03-01',
} as const;

const occlusion: fc.Arbitrary<OcclusionDose> = fc
  .record({
    ...base,
    method: fc.constant('occlusion' as const),
    limb: fc.constantFrom('arm' as const, 'leg' as const),
    side,
    scheme: fc.array(fc.integer({ min: 5, max: 30 }), { minLength: 1, maxLength: 5 }),
    loadKg: kilograms,
    oneRepMaxKg: fc.constant(null),
    cuff: fc.constantFrom(pneumatic, { kind: 'elastic-wrap', tightness: 7 } as const),
    inflation: fc.constantFrom('continuous' as const, 'intermittent' as const),
    capSeconds: fc.constant(600),
    supervised: fc.boolean(),
  })
  .map((dose) => ({ ...dose, sets: dose.scheme.length }));

export const anyDose: fc.Arbitrary<Dose> = fc.oneof(lowLoad, variation, occlusion);
