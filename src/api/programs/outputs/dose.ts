/** A prescribed dose, one shape for each way of dosing. */
import { z } from 'zod';
import { limbs, sides } from '#core/exercises/joints.ts';
import { type Dose, positions } from '#core/prescribing/dose.ts';

const band = z.object({ low: z.number(), high: z.number() });
const side = z.enum(sides);

const every = {
  exerciseId: z.string(),
  sets: z.number(),
  restSeconds: z.number(),
  secondsPerRepetition: z.number(),
  sessionsPerWeek: z.number(),
};

const lowLoad = z.object({
  ...every,
  method: z.literal('low-load'),
  side: z.enum([...sides, 'both']),
  repetitions: band,
  reserve: z.number().describe('Repetitions left at the end of a set.'),
  loadKg: z.number(),
  oneRepMaxKg: z.number().nullable(),
  machine: z.object({ id: z.string(), name: z.string() }).optional().describe('Left out = at home.'),
});

const variation = z.object({
  ...every,
  method: z.literal('variation'),
  side: z.enum([...sides, 'both']),
  repetitions: band,
  reserve: z.number(),
  effectiveLoadKg: z.number().nullable(),
  addedKg: z.number(),
  hold: z.object({ seconds: z.number(), mostSeconds: z.number() }).optional(),
  mark: z.number().optional(),
});

const cuff = z.union([
  z.object({
    kind: z.literal('pneumatic'),
    widthCm: z.number(),
    position: z.enum(positions),
    pressureMmhg: z.number(),
    percentOfLimbOcclusionPressure: z.number(),
    limbOcclusionPressureMmhg: z.number(),
    measuredOn: z.string(),
  }),
  z.object({ kind: z.literal('elastic-wrap'), tightness: z.number() }),
]);

const occlusion = z.object({
  ...every,
  method: z.literal('occlusion'),
  side,
  limb: z.enum(limbs),
  scheme: z.array(z.number()).readonly(),
  loadKg: z.number(),
  oneRepMaxKg: z.number().nullable(),
  cuff,
  inflation: z.enum(['continuous', 'intermittent']),
  capSeconds: z.number(),
  supervised: z.boolean(),
  pulseShown: z.boolean().optional(),
});

export const doseOutput = z.discriminatedUnion('method', [lowLoad, variation, occlusion]) satisfies z.ZodType<
  Dose,
  unknown
>;
