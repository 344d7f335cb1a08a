'use client';
/** Setting the baseline of a joint. The rules read these; by themselves they only ever become stricter. */
import { useRouter } from 'next/navigation';
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import { say } from '#messages/en/staff/review.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { setBaseline } from '../forms/sent/review.ts';
import { typedFrom } from '../forms/typed.ts';
import { BeforeSaving } from '../what-if/before-saving.tsx';

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
    ? say('baseline.limit-hint')
    : say('baseline.limit-proposed', {
        pain: known.usualPain ?? say('pain-not-known'),
        proposed,
        before: known.acceptablePainLimit,
      });

export const BaselineForm = ({ patientId, joint, known, overUsual, seen }: BaselineFormProps) => {
  const router = useRouter();
  const proposed = proposePainLimit(known?.usualPain ?? null, overUsual);
  return (
    <SentFrame
      sent={setBaseline}
      about={{ patientId, joint, seen: String(seen) }}
      start={startFrom(known, proposed)}
      label={say('baseline.set')}
      hints={{
        usualPain: say('baseline.usual-hint'),
        usualPainTop: say('baseline.top-hint'),
        acceptablePainLimit: limitHint(known, proposed),
        riseAcknowledged: say('baseline.rise-hint'),
      }}
      onTaken={router.refresh}
    >
      <BeforeSaving patientId={patientId} joint={joint} />
    </SentFrame>
  );
};
