/** A measurement in one line, with unit and how it was taken; and what belongs together as "the same, earlier". */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measureOf } from '#core/assessment/measures/registry.ts';
import { say } from '#messages/en/staff/measurements.ts';

/** Its subject stands before it on every page, so that it is not said again. */
export const measurementInWords = (row: Measurement): string => {
  const { inWords, subject } = measureOf(row.kind);
  const said = inWords(row);
  const again = `${subject?.(row) ?? ''}, `;
  return said.startsWith(again) ? said.slice(again.length) : said;
};

/** What was measured, beside the kind: the limb, the exercise, the activity. */
export const subjectOf = (row: Measurement): string => {
  const what = measureOf(row.kind).subject?.(row) ?? '';
  const where = [
    'side' in row ? (row.side === 'both' ? say('both-sides') : row.side) : '',
    'limb' in row ? row.limb : '',
  ];
  return [what, where.filter(Boolean).join(' ')].filter(Boolean).join(', ');
};

/** The newest of each subject, of rows that stand oldest first. */
export const newestBySubject = <M extends Measurement>(rows: readonly M[]): readonly M[] => [
  ...new Map(rows.map((row) => [subjectOf(row), row])).values(),
];
