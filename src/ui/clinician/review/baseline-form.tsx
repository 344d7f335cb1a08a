'use client';
/** Setting the baseline of a joint. The rules read these; by themselves they only ever become stricter. */
import { useRouter } from 'next/navigation';
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import { baselineFields } from '#core/record/staff-fields.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { typedFrom } from '../forms/typed.ts';

export interface BaselineFormProps {
  readonly patientId: string;
  readonly joint: Joint;
  /** What is set now; its values stand in the fields to be confirmed or changed. */
  readonly known: Baseline | null;
  /** Points over usual pain at which the clinic proposes the acceptable pain limit. */
  readonly overUsual: number;
  /** How often values were set for this joint when the page was opened. */
  readonly seen: number;
}

const fields = baselineFields.filter((field) => field.name !== 'joint');

const startFrom = (known: Baseline | null, proposed: number | null) =>
  known
    ? typedFrom({
        usualPain: known.usualPain,
        usualPainTop: known.usualPainTop,
        acceptablePainLimit: proposed ?? known.acceptablePainLimit,
        usualStiffnessMinutes: known.usualStiffnessMinutes,
        usualSwelling: known.usualSwelling,
        usualEffusion: known.usualEffusion,
      })
    : {};

const limitHint = (known: Baseline | null, proposed: number | null): string =>
  known === null || proposed === null
    ? '5 unless you set 6 or 7.'
    : `Proposed from usual pain ${known.usualPain}: ${proposed}. Set before: ${known.acceptablePainLimit}. You may set it lower.`;

export const BaselineForm = ({ patientId, joint, known, overUsual, seen }: BaselineFormProps) => {
  const router = useRouter();
  const proposed = proposePainLimit(known?.usualPain ?? null, overUsual);
  return (
    <FormFrame
      prefix="baseline-"
      fields={fields}
      start={startFrom(known, proposed)}
      label="Set baseline"
      taken="Baseline set. It applies from today."
      hints={{
        usualPain: '0 to 10. If left empty it is “not known”, and no dose progresses on it.',
        usualPainTop: 'From usual pain to 2 points above it. A wider band counts more pain as usual.',
        acceptablePainLimit: limitHint(known, proposed),
        riseAcknowledged: 'Yes ends the hold that a usual pain well over the first of this plan brings.',
      }}
      send={async (value) => {
        await client.clinician.review.setBaseline.mutate({ patientId, baseline: { ...value, joint }, seen });
        router.refresh();
      }}
    />
  );
};
