/** Everything measured over the course of care that says something of what it brought. */
import type { EffusionRecord } from '#core/record/record.ts';
import type { Measurement } from '../measurements/measurement.ts';
import type { AnyMeasure } from '../measures/measure.ts';
import { measures } from '../measures/registry.ts';
import { effusionLines } from './effusion.ts';
import type { OutcomeLine } from './judgement.ts';
import { courseAreas, linesBySubject, type Measured, type Person } from './measured.ts';

const linesOf = (
  one: AnyMeasure,
  rows: readonly Measured<Measurement>[],
  person: Person,
): readonly OutcomeLine[] => {
  const own = rows.filter((row) => row.kind === one.kind);
  if (!one.course) return [];
  return 'lines' in one.course ? one.course.lines(own, person) : linesBySubject(one, one.course, own, person);
};

/** Rows stand oldest first. */
export const outcomeLines = (
  rows: readonly Measured<Measurement>[],
  effusions: readonly EffusionRecord[],
  person: Person,
): readonly OutcomeLine[] =>
  courseAreas.flatMap((area) => [
    ...measures
      .filter((one: AnyMeasure) => one.course?.area === area)
      .flatMap((one) => linesOf(one, rows, person)),
    ...(area === 'joints' ? effusionLines(effusions) : []),
  ]);
