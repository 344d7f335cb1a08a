/** Measurements as the course of care reads them. */
import type { Measurement, MeasurementOf } from '../measurements/measurement.ts';

export type Measured<M = Measurement> = M & { readonly recordedBy: string };
export type MeasuredOf<K extends Measurement['kind']> = Measured<MeasurementOf<K>>;

export interface Person {
  readonly sex: 'female' | 'male' | null;
  readonly birthDay: string;
}

/** Rows of one kind, grouped by what was measured; each group oldest first. */
export const groupsOf = <K extends Measurement['kind']>(
  rows: readonly Measured[],
  kind: K,
  subjectOf: (row: MeasuredOf<K>) => string,
): readonly { readonly subject: string; readonly rows: readonly MeasuredOf<K>[] }[] => {
  const groups = new Map<string, MeasuredOf<K>[]>();
  for (const row of rows) {
    if (row.kind !== kind) continue;
    const own = row as MeasuredOf<K>;
    const subject = subjectOf(own);
    groups.set(subject, [...(groups.get(subject) ?? []), own]);
  }
  return [...groups].map(([subject, own]) => ({ subject, rows: own }));
};
