'use client';
/** Steps approved ahead for one exercise: signing for them, what stands, and withdrawing. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { preApprovalFields } from '#core/episode/care-fields.ts';
import { Button } from '#ui/design-system/button.tsx';
import type { ApprovedAhead } from '../answers.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

const fields: readonly Field[] = preApprovalFields.filter((field) => field.name !== 'itemId');

export interface ApproveAheadProps {
  readonly patientId: string;
  readonly itemId: string;
  /** Of this exercise, oldest first. */
  readonly approvals: readonly ApprovedAhead[];
  /** Days as the clinic reads them, by approval. */
  readonly signedOn: Readonly<Record<string, string>>;
}

export const ApproveAhead = ({ patientId, itemId, approvals, signedOn }: ApproveAheadProps) => {
  const router = useRouter();
  const inForce = approvals.filter((row) => row.withdrawnAt === null).at(-1);
  return (
    <div className="stack">
      <p>
        No more than 3 steps or 28 days. It ends with any ease-back, pause or new limit, or when the screening
        is out of date. It never covers occlusion pressure, a step over 10 % or of unknown size, a step that
        loads other joints, or a return.
      </p>
      {inForce ? (
        <div className="stack-close">
          <p>
            Signed by {inForce.signedBy}, {signedOn[inForce.id]}: {inForce.steps}{' '}
            {inForce.steps === 1 ? 'step' : 'steps'} within {inForce.days} days.
          </p>
          <Button
            tone="plain"
            onClick={async () => {
              await client.clinician.care.withdrawPreApproval.mutate({
                patientId,
                preApprovalId: inForce.id,
              });
              router.refresh();
            }}
          >
            Withdraw approval
          </Button>
        </div>
      ) : null}
      <FormFrame
        prefix={`ahead-${itemId}-`}
        fields={fields}
        label={inForce ? 'Sign again for steps ahead' : 'Sign for steps ahead'}
        taken="Signed."
        send={async (value) => {
          await client.clinician.care.preApprove.mutate({
            patientId,
            preApproval: { ...value, itemId },
          });
          router.refresh();
        }}
      />
    </div>
  );
};
