'use client';
/** Setting the baseline of a joint. The rules read these; the engine never changes them by itself. */
import { useRouter } from 'next/navigation';
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import { baselineFields } from '#core/record/staff-fields.ts';
import { say } from '#messages/en/staff/review.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { typedFrom } from '../forms/typed.ts';

export interface BaselineFormProps {
  readonly patientId: string;
  readonly joint: Joint;
  /** What is set now; its values stand in the fields to be confirmed or changed. */
  readonly known: Baseline | null;
  /** How often values were set for this joint when the page was opened. */
  readonly seen: number;
}

const fields = baselineFields.filter((field) => field.name !== 'joint');

const startFrom = (known: Baseline | null) =>
  known
    ? typedFrom({
        usualPain: known.usualPain,
        usualPainTop: known.usualPainTop,
        acceptablePainLimit: known.acceptablePainLimit,
        usualStiffnessMinutes: known.usualStiffnessMinutes,
        usualSwelling: known.usualSwelling,
        usualEffusion: known.usualEffusion,
      })
    : {};

export const BaselineForm = ({ patientId, joint, known, seen }: BaselineFormProps) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="baseline-"
      fields={fields}
      start={startFrom(known)}
      label={say('baseline.set')}
      taken={say('baseline.taken')}
      hints={{
        usualPain: say('baseline.usual-hint'),
        usualPainTop: say('baseline.top-hint'),
        acceptablePainLimit: say('baseline.limit-hint'),
      }}
      send={async (value) => {
        await client.clinician.review.setBaseline.mutate({ patientId, baseline: { ...value, joint }, seen });
        router.refresh();
      }}
    />
  );
};
