/** Everything measured over the course of care that says something of what it brought. */
import type { EffusionRecord } from '#core/record/record.ts';
import { functionLines } from './function-tests.ts';
import type { OutcomeLine } from './judgement.ts';
import type { Measured, Person } from './measured.ts';
import { patientLines } from './patient-and-joint.ts';
import { strengthLines } from './strength-and-size.ts';

/** Rows stand oldest first. */
export const outcomeLines = (
  rows: readonly Measured[],
  effusions: readonly EffusionRecord[],
  person: Person,
): readonly OutcomeLine[] => [
  ...patientLines(rows, effusions),
  ...functionLines(rows, person),
  ...strengthLines(rows),
];
