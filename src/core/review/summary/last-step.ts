/** The newest change of a dose, and how the mornings since then were answered, as figures. */
import { changesBetween, type DoseChange } from '#core/decision/dose/volume.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PatientRecord, PrescriptionVersion } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import { reviewSeries, topOn } from '../series.ts';
import type { InFocus } from './in-focus.ts';

interface MorningsSince {
  /** First morning looked at: the one after the step, or the first that was read where the step lies before. */
  readonly from: Day;
  readonly answered: number;
  /** Due after a session and not answered. */
  readonly missing: number;
  /** null = usual pain was not set on one of the days, so that none is said to be at usual. */
  readonly atUsual: number | null;
  readonly highest: number | null;
  /** The newest morning over the usual of its day. */
  readonly lastOver: { readonly day: Day; readonly pain: number } | null;
  readonly flareDays: number;
}

export type LastStepFact =
  | { readonly is: 'no-dose' }
  | { readonly is: 'no-step'; readonly dose: Dose; readonly since: Day }
  | {
      readonly is: 'step';
      readonly from: Dose;
      readonly to: Dose;
      readonly changes: readonly DoseChange[];
      readonly origin: PrescriptionVersion['origin'];
      readonly on: Day;
      readonly joint: Joint;
      readonly mornings: MorningsSince;
    };

interface Wanted {
  readonly record: PatientRecord;
  readonly focus: InFocus | null;
  /** First day that was read. */
  readonly since: Day;
  readonly today: Day;
  /** Civil day of the clinic. */
  readonly dayOf: (instant: number) => Day;
}

const morningsSince = ({ record, since, today }: Wanted, joint: Joint, step: Day): MorningsSince => {
  const next = addDays(step, 1);
  const from = next < since ? since : next;
  const series = reviewSeries({ record, decisions: [], joint, itemId: null, measure: 'sets', since, today });
  const rows = series.rows.flatMap(({ day, morning }) => (morning && day >= from ? [{ day, morning }] : []));
  const answered = rows.flatMap(({ day, morning }) =>
    typeof morning.pain === 'number'
      ? [{ day, pain: morning.pain, top: topOn(series, day)?.usualPainTop ?? null }]
      : [],
  );
  const over = answered.filter(({ pain, top }) => top !== null && pain > top);
  const last = over.at(-1);
  return {
    from,
    answered: answered.length,
    missing: rows.filter(({ morning }) => morning.pain === 'missing').length,
    atUsual: answered.some(({ top }) => top === null) ? null : answered.length - over.length,
    highest: answered.length === 0 ? null : Math.max(...answered.map(({ pain }) => pain)),
    lastOver: last ? { day: last.day, pain: last.pain } : null,
    flareDays: rows.filter(({ morning }) => morning.flare === true).length,
  };
};

export const lastStepFact = (wanted: Wanted): LastStepFact => {
  const { record, focus, dayOf } = wanted;
  if (!focus) return { is: 'no-dose' };
  const { version, joint } = focus;
  const before = record.prescriptions
    .filter((one) => one.itemId === version.itemId && one.version < version.version)
    .toSorted((a, b) => a.version - b.version)
    .at(-1);
  const on = dayOf(version.signedAt);
  if (!before) return { is: 'no-step', dose: version.dose, since: on };
  return {
    is: 'step',
    from: before.dose,
    to: version.dose,
    changes: changesBetween(before.dose, version.dose),
    origin: version.origin,
    on,
    joint,
    mornings: morningsSince(wanted, joint, on),
  };
};
