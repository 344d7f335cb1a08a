/** Invented screenings and readings for tests: everything answered no, then what a test changes. */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { methodOutcomes, type OutcomesInput } from '#core/screening/outcomes.ts';
import type { Screening, ScreeningItemAnswer } from '#core/screening/screening.ts';

export const today = '2026-03-02';

export const screeningWith = (changed: readonly ScreeningItemAnswer[] = [], day = today): Screening => ({
  version: 1,
  sheetVersion: screeningSheetVersion,
  day,
  answers: screeningItems.map(
    (item) => changed.find((answer) => answer.item === item.id) ?? { item: item.id, answer: 'no' },
  ),
});

export const bloodPressure = (systolicMmhg: number, diastolicMmhg: number, day = today): Measurement => ({
  kind: 'blood-pressure',
  day,
  systolicMmhg,
  diastolicMmhg,
  position: 'seated',
});

export const outcomesInput = (changed: Partial<OutcomesInput> = {}): OutcomesInput => ({
  screening: screeningWith(),
  clearances: [],
  measurements: [bloodPressure(124, 76)],
  today,
  ageYears: 61,
  settings: {},
  ...changed,
});

export const outcomeOf = (
  method: 'variation' | 'low-load' | 'occlusion',
  limb: 'arm' | 'leg',
  side: 'left' | 'right',
  changed: Partial<OutcomesInput> = {},
) => {
  const found = methodOutcomes(outcomesInput(changed)).find(
    (outcome) => outcome.method === method && outcome.limb === limb && outcome.side === side,
  );
  if (!found) throw new Error('No such outcome');
  return found;
};

export const codesOf = (outcome: {
  readonly reasons: readonly { readonly code: string }[];
}): readonly string[] => outcome.reasons.map(({ code }) => code);
