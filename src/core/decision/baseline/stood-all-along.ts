/** A record as though usual values of a joint, or its acceptable pain limit, had stood all along. */
import type { Joint } from '../../exercises/joints.ts';
import type { Baseline, PatientRecord } from '../../record/record.ts';
import type { Day } from '../../time/day.ts';

/** What is not named stays as it was set; a band is told by how far it goes over usual pain. */
interface UsualValues
  extends Partial<
    Pick<
      Baseline,
      'usualPain' | 'acceptablePainLimit' | 'usualStiffnessMinutes' | 'usualSwelling' | 'usualEffusion'
    >
  > {
  readonly bandOver?: number;
}

export type UsualValuesByJoint = Readonly<Partial<Record<Joint, UsualValues>>>;

const withValues = (baseline: Baseline, { bandOver, ...values }: UsualValues): Baseline => {
  const changed = { ...baseline, ...values };
  const { usualPain } = changed;
  if (usualPain === null) return { ...changed, usualPainTop: null };
  const over = bandOver ?? (baseline.usualPainTop ?? usualPain) - (baseline.usualPain ?? usualPain);
  return { ...changed, usualPainTop: usualPain + Math.max(0, over) };
};

const neverSet = (joint: Joint, setOn: Day): Baseline => ({
  joint,
  usualPain: null,
  usualPainTop: null,
  acceptablePainLimit: 5,
  usualStiffnessMinutes: 0,
  usualSwelling: 'none',
  usualEffusion: 'zero',
  usualFatigue: null,
  setOn,
  setBy: '',
  dueForReview: false,
});

/** Joints whose values are moved and that had none by a day. */
export const withoutValues = (
  record: Pick<PatientRecord, 'baselines'>,
  values: UsualValuesByJoint,
  day: Day,
): readonly Joint[] =>
  (Object.keys(values) as Joint[]).filter(
    (joint) => !record.baselines.some((one) => one.joint === joint && one.setOn <= day),
  );

/**
 * When each was set, and whether it is due for review, stays as it was: these are no values. A joint that had none
 * by the day looked at gets one of that day, so that it does not age.
 */
export const stoodAllAlong = (record: PatientRecord, values: UsualValuesByJoint, day: Day): PatientRecord => {
  if (Object.keys(values).length === 0) return record;
  const added = withoutValues(record, values, day).map((joint) => neverSet(joint, day));
  const all = [...record.baselines, ...added];
  return {
    ...record,
    baselines: all.map((one) => {
      const own = values[one.joint];
      return own ? withValues(one, own) : one;
    }),
  };
};
