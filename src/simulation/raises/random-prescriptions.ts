/** The two prescribed lines of a random history: one that loads both knees, one for the arm. */
import type { Joint } from '#core/exercises/joints.ts';
import type { LowLoadDose, VariationDose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';

export const firstDay = 20_500;
const dayMilliseconds = 86_400_000;
const hour = 3_600_000;

export const noonOf = (day: number): number => day * dayMilliseconds + 12 * hour;

const legDose: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'leg-exercise',
  side: 'both',
  sets: 3,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  repetitions: { low: 15, high: 25 },
  reserve: 2,
  loadKg: 10,
  oneRepMaxKg: 30,
};

const armDose: VariationDose = {
  method: 'variation',
  exerciseId: 'arm-exercise',
  side: 'left',
  sets: 3,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  repetitions: { low: 10, high: 15 },
  reserve: 2,
  effectiveLoadKg: null,
  addedKg: 0,
};

export const versionsOf = (
  itemId: string,
  joints: readonly Joint[],
  changeOn: number,
): readonly PrescriptionVersion[] => {
  const dose = itemId === 'leg' ? legDose : armDose;
  const badDay = { ...dose, sets: 2 };
  const common = { itemId, dose, badDay, joints };
  const changedAt = noonOf(changeOn);
  return [
    {
      ...common,
      id: `${itemId}-1`,
      version: 1,
      signedAt: noonOf(firstDay - 1),
      endedAt: changedAt,
      origin: 'clinician',
    },
    {
      ...common,
      id: `${itemId}-2`,
      version: 2,
      signedAt: changedAt,
      endedAt: null,
      origin: 'progress',
    },
  ];
};
