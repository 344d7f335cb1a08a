/** A patient measured, screened and in treatment, for whom all but the untested can be proposed. */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { VariationDose } from '#core/prescribing/dose.ts';
import type { ChoiceFor } from '#core/prescribing/exercise-choice.ts';
import { methods } from '#core/prescribing/methods.ts';
import { type PrescribingContext, withDefaults } from '#core/prescribing/prescribing-context.ts';
import type { Limit } from '#core/record/limit.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';

const outcomes: readonly MethodOutcome[] = methods.flatMap((method) =>
  (['arm', 'leg'] as const).flatMap((limb) =>
    (['left', 'right'] as const).map(
      (side) => ({ method, limb, side, eligibility: 'open', reasons: [] }) as const,
    ),
  ),
);

export const closed = (row: MethodOutcome): MethodOutcome => ({
  ...row,
  eligibility: 'closed',
  reasons: [
    {
      code: 'past-clot',
      from: 'past-clot',
      eligibility: 'closed',
      text: 'Told of a clot.',
      clearedBy: null,
      support: 'clinic',
    },
  ],
});

const day = '2026-03-02';

const measurements = [
  { kind: 'body-mass', day, massKg: 70 },
  { kind: 'stature', day, statureCm: 168 },
  {
    kind: 'repetitions-to-failure',
    day,
    exerciseId: 'knee-extension-seated',
    side: 'right',
    loadKg: 8,
    repetitions: 10,
  },
] as unknown as readonly Measurement[];

export const tested = (row: Measurement, side: 'left' | 'right'): Measurement =>
  row.kind === 'repetitions-to-failure' ? { ...row, side } : row;

export const context: PrescribingContext = {
  today: '2026-03-09',
  ageYears: 67,
  formulaSex: 'female',
  ownedLoadsKg: [1, 2, 3, 4, 5, 6],
  screening: null,
  clearances: [],
  outcomes,
  measurements,
  settings: withDefaults({}),
  limits: [],
  consents: [
    { kind: 'treatment', act: 'given', at: 1, version: 1 },
  ] as unknown as PrescribingContext['consents'],
  home: { observed: [], checks: [] },
  inForce: [],
};

export const limit = (over: Partial<Limit>): Limit =>
  ({
    joint: 'right-knee',
    kind: 'load-limit',
    limitKg: null,
    author: 'Dr Example',
    from: day,
    to: null,
    ...over,
  }) as Limit;

export const known = (over: Partial<ChoiceFor> = {}): ChoiceFor => ({
  context,
  ownedEquipment: [],
  followedJoints: ['right-knee'],
  names: {},
  ...over,
});

export const chinDraw: VariationDose = {
  method: 'variation',
  exerciseId: 'chin-draw',
  side: 'both',
  sets: 2,
  repetitions: { low: 8, high: 12 },
  reserve: 2,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  effectiveLoadKg: null,
  addedKg: 0,
};
