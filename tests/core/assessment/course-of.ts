/** The course of care of rows taken on two days, as one clinician entered them. */
import type { ErrorGroup } from '#core/assessment/change/error-group.ts';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';

export const [early, late] = ['2026-01-05', '2026-03-30'] as const;

export const lineFor = (errorGroup: ErrorGroup | null, ...rows: readonly Measurement[]) =>
  outcomeLines(
    rows.map((row) => ({ ...row, recordedBy: 'a' })),
    [],
    { sex: 'female', birthDay: '1958-08-14', errorGroup },
  )[0]!;
